import type { FormatChoices } from '@espalier/domain/formats'
import { listBranches, type PatternDocument } from '@espalier/domain/pattern'
import type { Space } from '@espalier/domain/pitch'
import { patternScene, type SceneStep } from './pattern-scene'

/** One answer of a look as it lies on the pitch. */
export type SceneAnswer = {
  readonly lookId: string
  /** A, B, C … as in the script; with its step's number before it where a pattern has several looks. */
  readonly letter: string
  readonly steps: readonly SceneStep[]
}

/** All answers of a pattern, each from where the look leaves the script. */
export function sceneAnswers(
  document: PatternDocument,
  space: Space,
  choices?: FormatChoices | undefined,
): readonly SceneAnswer[] {
  return listBranches(document).map(({ look, answer, document: played }) => {
    const leaves = document.steps.findIndex((step) => step.stepId === look.stepId)
    const letter = String.fromCharCode('A'.charCodeAt(0) + look.answers.indexOf(answer))
    return {
      lookId: look.lookId,
      letter: document.looks.length > 1 ? `${leaves + 1}${letter}` : letter,
      steps: patternScene(played, space, choices).steps.slice(leaves, leaves + answer.steps.length),
    }
  })
}
