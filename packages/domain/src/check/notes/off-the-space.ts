import { actorOf, type PatternDocument, type Position, placeOf, receiverOf } from '../../pattern'
import { type Spot, spaceRectangle } from '../../pitch'
import { metres, metresOf, millimetresOf } from '../../quantities'
import { outsideByMm } from '../areas'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { sayMetres } from '../wording'

/** Nobody can stand, run or play where the space has ended. */
export function offTheSpaceNotes(context: CheckContext): readonly CheckNote[] {
  const bounds = spaceRectangle(context.space)
  return namedPlaces(context.document).flatMap((named): CheckNote[] => {
    const slack = named.throwsIn ? context.limits.throwInMetres.value : metres(0)
    // Whole millimetres: a place on the line is on the space whatever the rounding of sums.
    const outside = outsideByMm(bounds, context.place(named.spot))
    if (outside <= millimetresOf(slack)) return []
    return [
      {
        code: 'off-the-space',
        severity: 'to-fix',
        stepId: named.stepId,
        position: named.position,
        value: metresOf(outside),
        limit: slack,
        unit: 'm',
        sourceKind: 'computed',
        source: 'the measured size of this space',
        sentence: `${named.what} is ${sayMetres(metresOf(outside))} off the space.`,
        remedy: null,
      },
    ]
  })
}

type NamedPlace = {
  readonly spot: Spot
  readonly stepId: string | null
  readonly position: Position | null
  readonly what: string
  readonly throwsIn: boolean
}

function namedPlaces(document: PatternDocument): readonly NamedPlace[] {
  const first = document.steps[0]
  const thrower = document.restart === 'throw-in' && first !== undefined ? actorOf(first.action) : null
  const starts = document.positions.map(({ position, spot }) => ({
    spot,
    stepId: null,
    position,
    what: `The starting place of ${position}`,
    throwsIn: position === thrower,
  }))
  const things = [
    ...document.obstacles.map((each) => ({ spot: each.spot, what: `The ${each.kind} ${each.obstacleId}` })),
    ...document.targets.map((each) => ({ spot: each.spot, what: `The target ${each.targetId}` })),
  ].map((each) => ({ ...each, stepId: null, position: null, throwsIn: false }))
  const moves = document.steps.flatMap((step): NamedPlace[] => {
    const spot = placeOf(step.action)
    const receiver = receiverOf(step.action)
    const ball = spot === null ? [] : [{ spot, position: receiver, what: `The place where ${receiver} meets the ball` }]
    const runs = step.runs.map((run) => ({
      spot: run.to,
      position: run.position,
      what: `The end of ${run.position}'s run`,
    }))
    return [...ball, ...runs].map((each) => ({ ...each, stepId: step.stepId, throwsIn: false }))
  })
  return [...starts, ...things, ...moves]
}
