import { distance } from '../../geometry'
import { GOALKEEPER, type Position } from '../../pattern'
import { type Metres, type Millimetres, metresOf, millimetres, millimetresOf, type Seconds } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import type { TimedStep } from '../timed-step'
import type { Track } from '../tracks'
import { sayMetres } from '../wording'

/**
 * Whoever plays the ball on has a team-mate near enough for a short pass, and none who stands so near that one opponent
 * marks both. Said as the ball is played on; a carry or a shot needs no support to be played.
 */
export function supportDistanceNotes(context: CheckContext): readonly CheckNote[] {
  const named = new Set<string>()
  return context.timeline.steps.flatMap((step): CheckNote[] => {
    if (step.kind !== 'pass') return []
    const others = teamMates(context, step)
    const tooNear = others.filter(
      (each) => isTooNear(context, step, each) && !named.has(pairOf(step.actor, each.position)),
    )
    for (const each of tooNear) named.add(pairOf(step.actor, each.position))
    return [...tooNear.map((each) => nearNote(context, step, each)), ...farNotes(context, step, others)]
  })
}

type TeamMate = { readonly position: Position; readonly awayMm: Millimetres; readonly track: Track }

function teamMates(context: CheckContext, { actor, from, startsAt }: TimedStep): readonly TeamMate[] {
  const mates: TeamMate[] = []
  context.playersAt(startsAt).forEach(({ position, point }, index) => {
    if (position === actor) return
    mates.push({ position, awayMm: millimetresOf(distance(point, from)), track: context.timeline.tracks[index]! })
  })
  return mates
}

/** Not on a run: somebody who only comes past is not in the way. */
function isStanding(track: Track, at: Seconds): boolean {
  return track.legs.every((leg) => leg.startsAt > at || leg.endsAt <= at)
}

/** Nearer still and they stand in one place, which another note says. A goalkeeper is marked by nobody. */
function isTooNear({ limits }: CheckContext, { startsAt }: TimedStep, { position, awayMm, track }: TeamMate): boolean {
  if (position === GOALKEEPER || awayMm >= millimetresOf(limits.supportNearMetres.value)) return false
  return awayMm >= millimetresOf(limits.placeMetres.value) && isStanding(track, startsAt)
}

/** Whoever of the two has the ball: they are named once. */
function pairOf(one: Position, other: Position): string {
  return one < other ? `${one} ${other}` : `${other} ${one}`
}

function nearNote({ limits }: CheckContext, step: TimedStep, mate: TeamMate): CheckNote {
  const limit = limits.supportNearMetres
  const away: Metres = metresOf(mate.awayMm)
  return {
    code: 'support-distance',
    severity: 'note',
    stepId: step.stepId,
    position: mate.position,
    value: away,
    limit: limit.value,
    unit: 'm',
    sourceKind: limit.kind,
    source: limit.source,
    sentence: `${mate.position} stands ${sayMetres(away)} from ${step.actor}: one opponent marks both.`,
    remedy: null,
  }
}

/** The nearest team-mate is further away than most of this age play cleanly. A pass that is too long itself says enough. */
function farNotes({ profile, teamReach }: CheckContext, step: TimedStep, mates: readonly TeamMate[]): CheckNote[] {
  const limit = teamReach?.strongFoot ?? profile.passLengthMax
  const limitMm = millimetresOf(limit.value)
  if (millimetresOf(distance(step.from, step.to)) > limitMm && step.flight.kind === 'rolls') return []
  if (mates.length === 0 || mates.some((each) => each.awayMm <= limitMm)) return []
  const away = metresOf(millimetres(Math.min(...mates.map((each) => each.awayMm))))
  return [
    {
      code: 'support-distance',
      severity: 'look-at',
      stepId: step.stepId,
      position: step.actor,
      value: away,
      limit: limit.value,
      unit: 'm',
      sourceKind: limit.kind,
      source: limit.source,
      sentence: `${step.actor} has nobody nearer than ${sayMetres(away)} to play to.`,
      remedy: null,
    },
  ]
}
