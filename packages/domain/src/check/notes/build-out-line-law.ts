import type { Format } from '../../formats'
import { buildOutLine } from '../../pitch'
import { metres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { nameObstacle, sayMetres } from '../wording'

/**
 * Where a format plays with a build-out line, opponents wait behind it at a goal kick until the ball is in play, and while
 * the goalkeeper has it in the hands until it is released. The goalkeeper may release early; drawn opponents stand as they
 * stand before the restart.
 */
export function buildOutLineNotes({ document, format, space, place }: CheckContext): readonly CheckNote[] {
  if (format.buildOutLine === null) return []
  if (document.restart !== 'goal-kick' && document.restart !== 'goalkeeper-hands') return []
  const line = buildOutLine(space)
  if (line === null) return []
  const { kind, source } = format.buildOutLine
  const until = document.restart === 'goal-kick' ? 'the ball is in play' : crossingWords(format)
  return document.obstacles.flatMap((each): CheckNote[] => {
    const over = millimetresOf(metres(line - place(each.spot).x))
    if (each.kind !== 'opponent' || over <= 0) return []
    return [
      {
        code: 'build-out-line-law',
        severity: 'to-fix',
        stepId: document.steps[0]?.stepId ?? null,
        position: null,
        value: metresOf(over),
        limit: 0,
        unit: 'm',
        sourceKind: kind,
        source,
        sentence: `The ${nameObstacle(document, each)} must wait behind the build-out line until ${until}: ${sayMetres(metresOf(over))} further back.`,
        remedy: null,
      },
    ]
  })
}

function crossingWords({ buildOutCrossing }: Format): string {
  return buildOutCrossing?.value === 'touched' ? 'a team-mate has touched the ball' : 'the goalkeeper releases the ball'
}
