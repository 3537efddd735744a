import fc from 'fast-check'
import { expect, test } from 'vitest'
import { checkShape, listBranches } from '../pattern'
import { nominalSpace } from '../pitch'
import { checkPattern } from './check-pattern'
import { hostileDocument } from './fixtures/hostile-case'
import { EVERYTHING } from './fixtures/wide-pattern'

const looked = hostileDocument.filter((each) => each.looks.length > 0 && checkShape(each).length === 0)

test('what is said of an answer is what a check of its whole way, played alone to the end, says of its steps', () => {
  fc.assert(
    fc.property(looked, (document) => {
      const space = nominalSpace(document.formatId)
      const said = checkPattern(document, space, EVERYTHING).notes
      for (const branch of listBranches(document)) {
        const own = new Set(branch.answer.steps.map((step) => step.stepId))
        const isOwn = ({ stepId }: { stepId: string | null }) => stepId !== null && own.has(stepId)
        const alone = checkPattern(branch.document, space, EVERYTHING).notes
        expect(said.filter(isOwn)).toEqual(alone.filter(isOwn))
      }
    }),
    { numRuns: 100 },
  )
}, 60_000)
