import texts from './en/teams.json'
import { speakerOf } from './message'

export const teamsMessage = speakerOf(texts)
