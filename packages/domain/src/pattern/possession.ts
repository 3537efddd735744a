import { actorOf, GOALKEEPER, receiverOf } from './actions'
import type { PatternDocument, Position, Step } from './document'
import type { DocumentFault } from './faults'

/** Follows the ball through the trunk, and through every answer from the step it branches off. */
export function possessionFaults(document: PatternDocument): readonly DocumentFault[] {
  const first = document.steps[0]
  if (first === undefined) return []
  const trunk = follow(document.steps, '/steps', firstHolder(document, first))
  const answers = document.looks.flatMap((look, lookIndex) => {
    const step = document.steps.find((each) => each.stepId === look.stepId)
    if (step === undefined) return []
    const pointer = `/looks/${lookIndex}`
    const looker: DocumentFault[] =
      look.by === actorOf(step.action)
        ? []
        : [
            {
              code: 'passer-without-ball',
              pointer: `${pointer}/by`,
              detail: `${look.by} does not have the ball before this step`,
            },
          ]
    return [
      ...looker,
      ...look.answers.flatMap((answer, index) => {
        const at = `${pointer}/answers/${index}`
        const walk = follow(answer.steps, `${at}/steps`, look.by)
        return [...walk.faults, ...rejoinFaults(document, answer.rejoins, `${at}/rejoins`, walk.holder)]
      }),
    ]
  })
  return [...trunk.faults, ...answers]
}

/** Anyone may take a restart, so the first action says who has the ball; only the hands are the goalkeeper's. */
function firstHolder(document: PatternDocument, first: Step): Position {
  return document.restart === 'goalkeeper-hands' ? GOALKEEPER : actorOf(first.action)
}

type Walk = { readonly faults: readonly DocumentFault[]; readonly holder: Position | null }

/** After a fault the walk goes on as if the actor had the ball, so that one mistake is reported once. */
function follow(steps: readonly Step[], pointer: string, holder: Position | null): Walk {
  const faults: DocumentFault[] = []
  let now = holder
  steps.forEach((step, index) => {
    const actor = actorOf(step.action)
    if (actor !== now) {
      const field = 'from' in step.action ? 'from' : 'by'
      faults.push({
        code: 'passer-without-ball',
        pointer: `${pointer}/${index}/action/${field}`,
        detail: now === null ? `${actor} has no ball after the shot` : `${actor} does not have the ball: ${now} has it`,
      })
    }
    now = receiverOf(step.action)
  })
  return { faults, holder: now }
}

function rejoinFaults(
  document: PatternDocument,
  rejoins: string,
  pointer: string,
  holder: Position | null,
): readonly DocumentFault[] {
  if (rejoins === 'exit') return []
  const step = document.steps.find((each) => each.stepId === rejoins)
  if (step === undefined || actorOf(step.action) === holder) return []
  return [
    {
      code: 'rejoin-without-ball',
      pointer,
      detail: `step ${rejoins} is played by ${actorOf(step.action)}, but ${holder ?? 'nobody'} has the ball after this answer`,
    },
  ]
}
