// A document and its space as flat arrays, for the floor of check.full: made once, outside every time taken.
import { formatOf } from '../../packages/domain/src/formats/index'
import { actorOf, type PatternDocument, placeOf, receiverOf, type Step } from '../../packages/domain/src/pattern/index'
import { LANDMARKS, landmarkPoint, type Space, type Spot } from '../../packages/domain/src/pitch/index'

export const PASS = 0
export const SET_BACK = 1
export const CARRY = 2
export const STARTS = ['before-the-ball', 'with-the-ball', 'after-the-ball'] as const

/** A way through the pattern: which steps, from which on it is measured and until which, and from which on it is played. */
type Way = { readonly at: readonly number[]; readonly since: number; readonly until: number; readonly from: number }

export function checkArrays(document: PatternDocument, space: Space) {
  const format = formatOf(document.formatId)
  const names = document.positions.map((each) => each.position)
  const P = names.length
  const stepIds: string[] = []
  const steps: Step[] = []
  const add = (step: Step) => {
    stepIds.push(step.stepId)
    return steps.push(step) - 1
  }
  const trunk = document.steps.map(add)
  const ways: Way[] = [{ at: trunk, since: 0, until: trunk.length, from: 0 }]
  for (const look of document.looks) {
    const leaves = document.steps.findIndex((each) => each.stepId === look.stepId)
    for (const answer of look.answers) {
      const own = answer.steps.map(add)
      const rejoins = document.steps.findIndex((each) => each.stepId === answer.rejoins)
      // One step of the trunk again: its earliest runs are those that may begin before the answer is over.
      const at = [...trunk.slice(0, leaves), ...own, ...(rejoins < 0 ? [] : trunk.slice(rejoins, rejoins + 1))]
      ways.push({ at, since: leaves, until: leaves + own.length, from: Math.max(0, leaves - 1) })
    }
  }
  const spots: Spot[] = []
  const spotOf = (spot: Spot) => spots.push(spot) - 1
  const startSpot = document.positions.map((each) => spotOf(each.spot))
  const thingSpot = document.obstacles.map((each) => spotOf(each.spot))
  const isOpponent = Uint8Array.from(document.obstacles, (each) => (each.kind === 'opponent' ? 1 : 0))
  const things = thingSpot.length
  const S = steps.length
  const kind = new Uint8Array(S)
  const actor = new Uint8Array(S)
  const receiver = new Uint8Array(S)
  const atOnce = new Uint8Array(S)
  const into = new Int16Array(S)
  const drawnAt = new Int16Array(S)
  const runFrom = new Int16Array(S + 1)
  const runner: number[] = []
  const runSpot: number[] = []
  const runStart: number[] = []
  steps.forEach((step, index) => {
    const { action } = step
    if (action.kind !== 'pass' && action.kind !== 'set-back' && action.kind !== 'carry') throw new Error(action.kind)
    if (action.kind === 'pass' && action.height === 'air') throw new Error('the floor knows no ball in the air')
    kind[index] = action.kind === 'pass' ? PASS : action.kind === 'set-back' ? SET_BACK : CARRY
    actor[index] = names.indexOf(actorOf(action))
    receiver[index] = names.indexOf(receiverOf(action) ?? '')
    atOnce[index] = action.kind === 'pass' && action.touches === 1 ? 1 : 0
    const place = placeOf(action)
    into[index] = place === null ? -1 : spotOf(place)
    const at = action.kind === 'carry' ? action.at : null
    drawnAt[index] = at === null ? -1 : document.obstacles.findIndex((each) => each.obstacleId === at)
    for (const run of step.runs) {
      runner.push(names.indexOf(run.position))
      runSpot.push(spotOf(run.to))
      runStart.push(STARTS.indexOf(run.start))
    }
    runFrom[index + 1] = runner.length
  })
  const N = spots.length
  const spotLandmark = Uint8Array.from(spots, (spot) => LANDMARKS.indexOf(spot.landmark))
  const spotUp = Float64Array.from(spots, (spot) => spot.upMm / 1000)
  const spotRight = Float64Array.from(spots, (spot) => spot.rightMm / 1000)
  const landmarkX = Float64Array.from(LANDMARKS, (landmark) => landmarkPoint(space, landmark)?.x ?? Number.NaN)
  const landmarkY = Float64Array.from(LANDMARKS, (landmark) => landmarkPoint(space, landmark)?.y ?? Number.NaN)
  const halfway = landmarkX[LANDMARKS.indexOf('centre-mark')]!
  const lengthM = space.lengthMm / 1000
  const halfWidth = space.widthMm / 2000
  const goalDepth = format.goalArea!.value.depthMm / 1000
  const goalHalf = format.goalArea!.value.widthMm / 2000
  const penaltyDepth = format.penaltyArea!.value.depthMm / 1000
  const penaltyHalf = format.penaltyArea!.value.widthMm / 2000
  return {
    startSpot,
    thingSpot,
    isOpponent,
    kind,
    actor,
    receiver,
    atOnce,
    into,
    drawnAt,
    runFrom,
    runner,
    runSpot,
    runStart,
    spotLandmark,
    spotUp,
    spotRight,
    landmarkX,
    landmarkY,
    halfway,
    lengthM,
    halfWidth,
    goalDepth,
    goalHalf,
    penaltyDepth,
    penaltyHalf,
    stepIds,
    trunk,
    ways,
    P,
    N,
    things,
  }
}
