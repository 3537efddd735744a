import texts from './en/age-profiles.json'
import { speakerOf } from './message'

export const ageProfilesMessage = speakerOf(texts)
