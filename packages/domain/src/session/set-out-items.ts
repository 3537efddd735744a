import type { ActivityKind } from '../curriculum'
import type { FormatChoices } from '../formats'
import { GOALKEEPER } from '../pattern'
import { landmarksFound, type Space } from '../pitch'
import { type Millimetres, millimetres } from '../quantities'
import { edgesOf } from './fit-areas'
import { type PatternPlaces, type Place, placeAt } from './pattern-places'
import type { Area, SetOutStop } from './plan'

/** One thing to put down, before the walk decides its order. */
export type SetOutItem = Place & {
  readonly item: 'cone' | 'pole' | 'small-goal'
  readonly purpose: string
  readonly mouth: SetOutStop['mouth']
  readonly activityIds: readonly string[]
}

type ItemOf = Omit<SetOutItem, 'activityIds'>

/** What stands so near a landmark needs no cone; two things so near each other are one. Common practice, no source. */
export const SAME_PLACE_MM = 500

/** What one activity needs on the ground: corners of its areas, goals of its games, starts and poles of its pattern. */
export function itemsOfActivity(
  activity: { readonly activityId: string; readonly kind: ActivityKind; readonly areas: readonly Area[] },
  places: readonly PatternPlaces[],
  space: Space,
): readonly SetOutItem[] {
  const isPattern = activity.kind === 'pattern'
  const cornered = isPattern ? activity.areas.slice(1) : activity.areas
  const items: readonly ItemOf[] = [
    ...(isPattern ? places.flatMap((each) => itemsOfPattern(each, space)) : []),
    ...cornered.flatMap((area) => [
      ...cornersOf(area, isPattern ? 'corner for those next in' : cornerPurpose(activity.kind)),
    ]),
    ...(hasGoals(activity.kind) ? activity.areas.flatMap((area) => goalsOf(area, activity.kind, space)) : []),
  ]
  return items.map((item) => ({ ...item, activityIds: [activity.activityId] }))
}

/** Things of all activities, each place once: a cone that two activities share is set once and serves both. */
export function shareItems(items: readonly SetOutItem[], space: Space, choices?: FormatChoices): readonly SetOutItem[] {
  const painted = landmarksFound(space, choices).map(({ point }) => placeAt(point))
  const shared: SetOutItem[] = []
  for (const item of items) {
    if (item.item === 'cone' && painted.some((place) => isSamePlace(place, item))) continue
    const at = shared.findIndex((other) => other.item === item.item && isSamePlace(other, item))
    const twin = shared[at]
    if (!twin) {
      shared.push(item)
      continue
    }
    shared[at] = { ...twin, activityIds: [...new Set([...twin.activityIds, ...item.activityIds])] }
  }
  return shared
}

function isSamePlace(a: Place, b: Place): boolean {
  return Math.abs(a.upMm - b.upMm) <= SAME_PLACE_MM && Math.abs(a.rightMm - b.rightMm) <= SAME_PLACE_MM
}

function cone(upMm: number, rightMm: number, purpose: string): ItemOf {
  return { item: 'cone', upMm: millimetres(upMm), rightMm: millimetres(rightMm), purpose, mouth: null }
}

function cornersOf(area: Area, purpose: string): readonly ItemOf[] {
  const { nearMm, farMm, leftMm, rightMm } = edgesOf(area)
  return [
    cone(nearMm, leftMm, purpose),
    cone(nearMm, rightMm, purpose),
    cone(farMm, leftMm, purpose),
    cone(farMm, rightMm, purpose),
  ]
}

function cornerPurpose(kind: ActivityKind): string {
  return kind === 'rondo' ? 'corner of a rondo' : kind === 'keep-ball' ? 'corner for keep-ball' : 'corner of a game'
}

function hasGoals(kind: ActivityKind): boolean {
  return kind === 'small-sided-game' || kind === 'conditioned-game' || kind === 'build-out-game'
}

/** Two small goals at the short ends; a build-out game has three targets at the far end and uses the large goal that stands there. */
function goalsOf(area: Area, kind: ActivityKind, space: Space): readonly ItemOf[] {
  const { nearMm, farMm, leftMm, rightMm } = edgesOf(area)
  if (kind === 'build-out-game') {
    const large = nearMm === 0 && space.goals.some((goal) => goal.end === 'own') && leftMm < 0 && rightMm > 0
    const quarter = Math.floor(area.widthMm / 4)
    const targets = [-quarter, 0, quarter].map((offset) => smallGoal(farMm, area.rightMm + offset, 'down', 'target'))
    return large ? targets : [smallGoal(nearMm, area.rightMm, 'up', 'goal to defend'), ...targets]
  }
  return area.lengthMm >= area.widthMm
    ? [smallGoal(nearMm, area.rightMm, 'up', 'goal'), smallGoal(farMm, area.rightMm, 'down', 'goal')]
    : [smallGoal(area.upMm, leftMm, 'right', 'goal'), smallGoal(area.upMm, rightMm, 'left', 'goal')]
}

function smallGoal(upMm: number, rightMm: number, mouth: 'up' | 'down' | 'left' | 'right', purpose: string): ItemOf {
  return { item: 'small-goal', upMm: millimetres(upMm), rightMm: millimetres(rightMm), purpose, mouth }
}

function itemsOfPattern(places: PatternPlaces, space: Space): readonly ItemOf[] {
  return [
    ...places.starts
      .filter(({ position }) => position !== GOALKEEPER)
      .map(({ position, upMm, rightMm }) => cone(upMm, rightMm, `${position} starts here`)),
    ...places.obstacles.flatMap((obstacle): readonly ItemOf[] => {
      if (obstacle.kind === 'opponent') return []
      const { upMm, rightMm } = obstacle
      return [{ item: obstacle.kind, upMm, rightMm, purpose: 'stands for an opponent', mouth: null }]
    }),
    ...places.targets.flatMap((target) => itemsOfTarget(target, space)),
    ...places.cut.flatMap(({ name, gate }) => gateItems(gate, GATE_MM, space, `gate for ${name}`)),
  ]
}

function itemsOfTarget(target: PatternPlaces['targets'][number], space: Space): readonly ItemOf[] {
  switch (target.kind) {
    case 'gate':
      return gateItems(target, target.widthMm, space, 'gate')
    case 'small-goal':
      return [smallGoal(target.upMm, target.rightMm, towards(target, space), 'target')]
    case 'goal':
      return isGoalThere(target, space) ? [] : [smallGoal(target.upMm, target.rightMm, towards(target, space), 'goal')]
  }
}

/** A gate is two cones a width apart, across the pitch; at the edge it moves in rather than leave the space. */
function gateItems(at: Place, widthMm: Millimetres, space: Space, purpose: string): readonly ItemOf[] {
  const half = Math.floor(space.widthMm / 2)
  const gap = Math.min(widthMm, 2 * half)
  const left = Math.max(-half, Math.min(half - gap, at.rightMm - Math.floor(gap / 2)))
  return [cone(at.upMm, left, purpose), cone(at.upMm, left + gap, purpose)]
}

/** Two metres: wide enough to find, narrow enough to aim at. Common practice, no source. */
const GATE_MM = millimetres(2000)

/** A goal looks back at whoever shoots at it: from the far half down the pitch, from the near half up. */
function towards(at: Place, space: Space): 'up' | 'down' {
  return at.upMm * 2 > space.lengthMm ? 'down' : 'up'
}

function isGoalThere(at: Place, space: Space): boolean {
  return space.goals.some((goal) => {
    const line = goal.end === 'own' ? 0 : space.lengthMm
    return Math.abs(at.upMm - line) <= 1500 && Math.abs(at.rightMm) <= goal.widthMm
  })
}
