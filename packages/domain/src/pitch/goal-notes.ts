import type { Format } from '../formats'
import type { GoalFound, Space } from './space'
import { inMetres, type SpaceNote } from './space-note'

/** The goals found: one to build out from, none wider than the law or the space, every movable one anchored. */
export function goalNotes(space: Space, format: Format): readonly SpaceNote[] {
  return [
    ...missingNotes(space),
    ...space.goals.flatMap((goal) => widthNotes(goal, space, format)),
    ...movableNotes(space),
  ]
}

function missingNotes(space: Space): readonly SpaceNote[] {
  if (space.goals.some((goal) => goal.end === 'own')) return []
  const sentence = 'There is no goal at your own end: put a bag down as its middle.'
  const measured = { valueMm: null, limitMm: null, kind: 'computed', source: 'from the goals found' } as const
  return [{ code: 'no-own-goal', sentence, ...measured }]
}

function widthNotes(goal: GoalFound, space: Space, format: Format): readonly SpaceNote[] {
  const notes: SpaceNote[] = []
  const which = goal.end === 'own' ? 'Your own goal' : 'The far goal'
  const { value, kind, source } = format.goal
  if (goal.widthMm > value.widthMm) {
    const sentence = `${which} is ${inMetres(goal.widthMm)} wide; the format’s is ${
      value.meaning === 'maximum' ? 'at most ' : ''
    }${inMetres(value.widthMm)}.`
    notes.push({
      code: 'goal-wider-than-format',
      sentence,
      valueMm: goal.widthMm,
      limitMm: value.widthMm,
      kind,
      source,
    })
  }
  if (goal.widthMm > space.widthMm) {
    const sentence = `${which} is wider than the space: measure both again.`
    const limit = { limitMm: space.widthMm, kind: 'computed', source: 'from the measured widths' } as const
    notes.push({ code: 'goal-wider-than-space', sentence, valueMm: goal.widthMm, ...limit })
  }
  return notes
}

function movableNotes(space: Space): readonly SpaceNote[] {
  if (!space.goals.some((goal) => goal.movable)) return []
  return [
    {
      code: 'goal-movable',
      sentence:
        'A goal here can be moved: anchor it or weigh it down before anyone plays, and let nobody climb or hang on it. Your club’s and local rules decide.',
      valueMm: null,
      limitMm: null,
      kind: 'published',
      source: 'U.S. CPSC, Guidelines for Movable Soccer Goal Safety, 1995',
    },
  ]
}
