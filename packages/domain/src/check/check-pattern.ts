import { type FormatChoices, formatOf } from '../formats'
import { type Branch, listBranches, type PatternDocument, type Step } from '../pattern'
import type { Space } from '../pitch'
import { assert, type Seconds } from '../quantities'
import type { CheckContext, Rule } from './context'
import { type CheckLimits, DEFAULT_LIMITS } from './limits'
import { type CheckNote, NOTE_CODES, type NoteCode, TO_FIX_CODES } from './note'
import { playStep, type Setting, type State, settingOf } from './play-step'
import { type AgeProfile, profileFor } from './profiles'
import { applyRemedy } from './remedy'
import { RULES } from './rules'
import type { Surface } from './surfaces'
import type { TeamReach } from './team-reach'
import type { TimedStep } from './timed-step'
import { type PlacedPlayer, type Playing, playersAt, playStates, type Timeline, timelineAfter } from './timeline'

/** Stored with every published version: notes of another version may differ from today's. */
export const CHECK_VERSION = '2'

export type CheckOptions = {
  /** Players of this profile; by default that of the pattern's age group. */
  readonly profile?: AgeProfile
  readonly surface?: Surface
  readonly limits?: Partial<CheckLimits>
  /** How far this team's passes find a gate, measured on the field; replaces the age's own guess. */
  readonly teamReach?: TeamReach
  readonly choices?: FormatChoices
  /** Only the notes of this severity, by running only the rules that can make one; by default all notes. */
  readonly severity?: 'to-fix'
}

export type PatternCheck = { readonly timeline: Timeline; readonly notes: readonly CheckNote[] }

/**
 * Plays a pattern on a space and says what does not fit together. Pure and deterministic: browser and server agree.
 * The document must have passed `checkShape`. Notes come in the order of the script.
 */
export function checkPattern(document: PatternDocument, space: Space, options: CheckOptions = {}): PatternCheck {
  return checkWith(RULES, document, space, options)
}

/** The same with a table of rules of one's own; tests break one rule at a time with it. */
export function checkWith(
  rules: Readonly<Record<NoteCode, Rule>>,
  document: PatternDocument,
  space: Space,
  options: CheckOptions = {},
): PatternCheck {
  const setting = checkSetting(document, space, options)
  const states = playStates(document, setting.play)
  const trunk = contextOf(document, setting, states)
  const asked = rulesFor(rules, options.severity)
  const notes = inScriptOrder(document, [...notesOf(asked, trunk), ...branchNotes(asked, document, setting, states)])
  const { severity } = options
  return {
    timeline: trunk.timeline,
    notes: severity === undefined ? notes : notes.filter((note) => note.severity === severity),
  }
}

/** In the order of the codes, whichever of them are asked. */
function rulesFor(rules: Readonly<Record<NoteCode, Rule>>, severity: CheckOptions['severity']): readonly Rule[] {
  const codes: readonly NoteCode[] = severity === undefined ? NOTE_CODES : TO_FIX_CODES
  return NOTE_CODES.filter((code) => codes.includes(code)).map((code) => rules[code])
}

function notesOf(rules: readonly Rule[], context: CheckContext): readonly CheckNote[] {
  return rules.flatMap((rule) => rule(context))
}

/** Each answer is played as a way of its own; only what is said of its own steps is new. */
function branchNotes(
  rules: readonly Rule[],
  document: PatternDocument,
  setting: CheckSetting,
  trunk: readonly State[],
): readonly CheckNote[] {
  return listBranches(document).flatMap((branch) => {
    const own = new Set(branch.answer.steps.map((step) => step.stepId))
    const isAsked = (stepId: string | null) => stepId !== null && own.has(stepId)
    const states = playStates(branch.document, setting.play, playingOf(branch, document, trunk))
    const context = contextOf(branch.document, setting, states, isAsked)
    return notesOf(rules, context).filter((note) => isAsked(note.stepId))
  })
}

/**
 * What of an answer's way is to be played. The steps before it are the trunk's; the last of them is played again, since how its
 * ball is played may depend on the answer. Of the steps after it those count that can change where somebody is while it lasts:
 * runs start with the step before theirs at the earliest, so none does once a step begins after all its balls are received.
 */
function playingOf(branch: Branch, document: PatternDocument, trunk: readonly State[]): Playing {
  const leaves = document.steps.findIndex((step) => step.stepId === branch.look.stepId)
  const end = leaves + branch.answer.steps.length
  const isEnough = ({ steps }: State) => {
    const latest = steps.at(-1)
    if (latest === undefined || steps.length <= end) return false
    return steps.slice(0, end).every((step) => latest.startsAt > step.receivedAt)
  }
  return { known: trunk.slice(0, Math.max(1, leaves)), isEnough }
}

/** What is the same for trunk and answers. */
type CheckSetting = Omit<CheckContext, 'document' | 'timeline' | 'isAsked' | 'playersAt' | 'retime' | 'mended'> & {
  readonly play: Setting
}

function checkSetting(document: PatternDocument, space: Space, options: CheckOptions): CheckSetting {
  const { choices } = options
  const profile = options.profile ?? profileFor(document.ageGroup)
  const surface = options.surface ?? 'normal'
  const play = settingOf(document, space, profile, surface, choices)
  const format = formatOf(document.formatId, choices)
  const limits = { ...DEFAULT_LIMITS, ...options.limits }
  return { space, profile, surface, format, limits, teamReach: options.teamReach ?? null, place: play.place, play }
}

function contextOf(
  document: PatternDocument,
  setting: CheckSetting,
  states: readonly State[],
  isAsked: CheckContext['isAsked'] = () => true,
): CheckContext {
  const timeline = timelineAfter(states.at(-1)!)
  // Named one by one: what a spread has made is read far more slowly, and every rule reads this.
  const { space, format, profile, surface, limits, teamReach, place } = setting
  return {
    document,
    space,
    format,
    profile,
    surface,
    limits,
    teamReach,
    place,
    timeline,
    isAsked,
    playersAt: playersFinder(timeline),
    retime: (index, step) => retimeStep(document, states, setting.play, index, step),
    mended: (remedy) => {
      const after = applyRemedy(document, remedy)
      return contextOf(after, setting, playStates(after, setting.play))
    },
  }
}

function playersFinder(timeline: Timeline): CheckContext['playersAt'] {
  const known = new Map<Seconds, readonly PlacedPlayer[]>()
  return (at) => {
    const before = known.get(at)
    if (before !== undefined) return before
    const players = playersAt(timeline, at)
    known.set(at, players)
    return players
  }
}

/** From the step before: how a ball is played depends on the next step where that lets it through. */
function retimeStep(
  document: PatternDocument,
  states: readonly State[],
  setting: Setting,
  index: number,
  changed: Step,
): TimedStep {
  const steps = document.steps.map((step, at) => (at === index ? changed : step))
  const first = Math.max(0, index - 1)
  let state = states[first]
  for (let at = first; at <= index; at += 1) {
    const step = steps[at]
    assert(state !== undefined && step !== undefined, 'a step to try again stands in the document')
    state = playStep(state, step, steps[at + 1], setting)
  }
  const timed = state?.steps[index]
  assert(timed !== undefined, 'a step that was played has its times')
  return timed
}

/** What speaks of the whole pattern first, then step by step, each look's answers before the step they may replace. */
function inScriptOrder(document: PatternDocument, notes: readonly CheckNote[]): readonly CheckNote[] {
  const order = document.steps.flatMap((step) => [
    ...document.looks
      .filter((look) => look.stepId === step.stepId)
      .flatMap((look) => look.answers.flatMap((answer) => answer.steps.map((each) => each.stepId))),
    step.stepId,
  ])
  const rank = new Map(order.map((stepId, index) => [stepId, index]))
  const rankOf = (note: CheckNote) => (note.stepId === null ? -1 : (rank.get(note.stepId) ?? -1))
  return [...notes].sort((a, b) => rankOf(a) - rankOf(b))
}
