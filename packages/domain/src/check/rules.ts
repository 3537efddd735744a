import type { Rule } from './context'
import type { NoteCode } from './note'
import { ballStopsShortNotes } from './notes/ball-stops-short'
import { beyondTeamReachNotes } from './notes/beyond-team-reach'
import { buildOutLineNotes } from './notes/build-out-line-law'
import { carryReleaseNotes } from './notes/carry-release'
import { coverShadowNotes } from './notes/cover-shadow'
import { freeKickNotes } from './notes/free-kick-law'
import { goalKickNotes } from './notes/goal-kick-law'
import { goalkeeperHoldNotes } from './notes/goalkeeper-hold-law'
import { handsNotes } from './notes/hands-law'
import { headingLimitNotes } from './notes/heading-limit'
import { laneClosedNotes } from './notes/lane-closed'
import { loftedToStandingNotes } from './notes/lofted-to-standing'
import { nobodyBehindNotes } from './notes/nobody-behind'
import { offTheSpaceNotes } from './notes/off-the-space'
import { offsideNotes } from './notes/offside-law'
import { outOfViewNotes } from './notes/out-of-view'
import { passTooLongNotes } from './notes/pass-too-long'
import { puntNotes } from './notes/punt-law'
import { receiverLateNotes } from './notes/receiver-late'
import { strikerStraightNotes } from './notes/striker-straight'
import { supportDistanceNotes } from './notes/support-distance'
import { throwInNotes } from './notes/throw-in-law'
import { twoInOnePlaceNotes } from './notes/two-in-one-place'
import { weakSideOverNotes } from './notes/weak-side-over'

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
  'heading-limit': headingLimitNotes,
  'goalkeeper-hold-law': goalkeeperHoldNotes,
  'punt-law': puntNotes,
  'free-kick-law': freeKickNotes,
  'throw-in-law': throwInNotes,
  'beyond-team-reach': beyondTeamReachNotes,
  'cover-shadow': coverShadowNotes,
  'out-of-view': outOfViewNotes,
  'support-distance': supportDistanceNotes,
  'nobody-behind': nobodyBehindNotes,
  'carry-release': carryReleaseNotes,
  'weak-side-over': weakSideOverNotes,
  'striker-straight': strikerStraightNotes,
} satisfies Record<NoteCode, Rule>
