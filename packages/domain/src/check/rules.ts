import type { Rule } from './context'
import type { NoteCode } from './note'
import { ballStopsShortNotes } from './notes/ball-stops-short'
import { buildOutLineNotes } from './notes/build-out-line-law'
import { goalKickNotes } from './notes/goal-kick-law'
import { handsNotes } from './notes/hands-law'
import { laneClosedNotes } from './notes/lane-closed'
import { loftedToStandingNotes } from './notes/lofted-to-standing'
import { offTheSpaceNotes } from './notes/off-the-space'
import { offsideNotes } from './notes/offside-law'
import { passTooLongNotes } from './notes/pass-too-long'
import { receiverLateNotes } from './notes/receiver-late'
import { twoInOnePlaceNotes } from './notes/two-in-one-place'

/** Every rule of the check, by the code of the notes it makes. */
export const RULES = {
  'off-the-space': offTheSpaceNotes,
  'two-in-one-place': twoInOnePlaceNotes,
  'ball-stops-short': ballStopsShortNotes,
  'receiver-late': receiverLateNotes,
  'pass-too-long': passTooLongNotes,
  'lane-closed': laneClosedNotes,
  'goal-kick-law': goalKickNotes,
  'build-out-line-law': buildOutLineNotes,
  'offside-law': offsideNotes,
  'hands-law': handsNotes,
  'lofted-to-standing': loftedToStandingNotes,
} satisfies Record<NoteCode, Rule>
