import {
  actorOf,
  type PatternDocument,
  type PlacedPosition,
  type Position,
  placeOf,
  receiverOf,
  type Step,
} from '../../pattern'
import { type Spot, spaceRectangle } from '../../pitch'
import { metres, metresOf, millimetresOf } from '../../quantities'
import { outsideByMm } from '../areas'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { nameObstacle, sayMetres } from '../wording'

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
  const standing = (list: readonly PlacedPosition[], what: string) =>
    list.map(({ position, spot }) => ({
      spot,
      position,
      what: `${what} of ${position}`,
      throwsIn: position === thrower,
    }))
  const things = [
    ...document.obstacles.map((each) => ({ spot: each.spot, what: `The ${nameObstacle(document, each)}` })),
    ...document.targets.map((each) => ({ spot: each.spot, what: 'The target' })),
  ].map((each) => ({ ...each, position: null, throwsIn: false }))
  const still = [
    ...standing(document.positions, 'The starting place'),
    ...standing(document.inPossession, 'The place in possession'),
    ...standing(document.onLoss, 'The place on losing the ball'),
    ...things,
  ].map((each) => ({ ...each, stepId: null }))
  return [...still, ...document.steps.flatMap(placesOfStep)]
}

function placesOfStep(step: Step): readonly NamedPlace[] {
  const { stepId, action } = step
  const spot = placeOf(action)
  const receiver = receiverOf(action)
  const what =
    'into' in action ? `The place where ${receiver} meets the ball` : `The end of ${receiver}'s way with the ball`
  const ball = spot === null ? [] : [{ spot, position: receiver, what }]
  const runs = step.runs
    // A run to where the ball is met is the same place said twice.
    .filter((run) => run.position !== receiver || spot === null || !isSameSpot(run.to, spot))
    .map((run) => ({ spot: run.to, position: run.position, what: `The end of ${run.position}'s run` }))
  return [...ball, ...runs].map((each) => ({ ...each, stepId, throwsIn: false }))
}

function isSameSpot(one: Spot, other: Spot): boolean {
  return one.landmark === other.landmark && one.upMm === other.upMm && one.rightMm === other.rightMm
}
