import texts from './en/ledger.json'
import { speakerOf } from './message'

export const ledgerMessage = speakerOf(texts)
