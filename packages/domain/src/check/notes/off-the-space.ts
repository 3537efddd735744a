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
  return namedPlaces(context).flatMap((named): CheckNote[] => {
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
        sentence: `${named.what()} is ${sayMetres(metresOf(outside))} off the space.`,
        remedy: null,
      },
    ]
  })
}

type NamedPlace = {
  readonly spot: Spot
  readonly stepId: string | null
  readonly position: Position | null
  /** Said only of a place that is off the space. */
  readonly what: () => string
  readonly throwsIn: boolean
}

function namedPlaces({ document, isAsked }: CheckContext): readonly NamedPlace[] {
  const still = isAsked(null) ? stillPlaces(document) : []
  return [...still, ...document.steps.filter(({ stepId }) => isAsked(stepId)).flatMap(placesOfStep)]
}

function stillPlaces(document: PatternDocument): readonly NamedPlace[] {
  const first = document.steps[0]
  const thrower = document.restart === 'throw-in' && first !== undefined ? actorOf(first.action) : null
  const standing = (list: readonly PlacedPosition[], what: string) =>
    list.map(({ position, spot }): NamedPlace => {
      return { spot, stepId: null, position, what: () => `${what} of ${position}`, throwsIn: position === thrower }
    })
  const thing = (spot: Spot, what: () => string): NamedPlace => {
    return { spot, stepId: null, position: null, what, throwsIn: false }
  }
  return [
    ...standing(document.positions, 'The starting place'),
    ...standing(document.inPossession, 'The place in possession'),
    ...standing(document.onLoss, 'The place on losing the ball'),
    ...document.obstacles.map((each) => thing(each.spot, () => `The ${nameObstacle(document, each)}`)),
    ...document.targets.map((each) => thing(each.spot, () => 'The target')),
  ]
}

function placesOfStep({ stepId, action, runs }: Step): readonly NamedPlace[] {
  const spot = placeOf(action)
  const receiver = receiverOf(action)
  const places: NamedPlace[] = []
  if (spot !== null) {
    const what = () =>
      'into' in action ? `The place where ${receiver} meets the ball` : `The end of ${receiver}'s way with the ball`
    places.push({ spot, stepId, position: receiver, what, throwsIn: false })
  }
  for (const { position, to } of runs) {
    // A run to where the ball is met is the same place said twice.
    if (position === receiver && spot !== null && isSameSpot(to, spot)) continue
    places.push({ spot: to, stepId, position, what: () => `The end of ${position}'s run`, throwsIn: false })
  }
  return places
}

function isSameSpot(one: Spot, other: Spot): boolean {
  return one.landmark === other.landmark && one.upMm === other.upMm && one.rightMm === other.rightMm
}
