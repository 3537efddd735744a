import { squadMessage } from '../../messages/squad'
import type { RowFault } from './squad-rows'

const WORDS = {
  'missing-name': 'missingName',
  'long-name': 'longName',
  'name-twice': 'nameTwice',
  'same-position': 'samePosition',
  'too-many-cells': 'tooManyCells',
  'bad-shirt': 'badShirt',
  'shirt-twice': 'shirtTwice',
  'bad-position': 'badPosition',
  'bad-goalkeeper': 'badGoalkeeper',
  'bad-foot': 'badFoot',
} as const satisfies Record<RowFault['code'], string>

export function rowFaultWords(fault: RowFault): string {
  return squadMessage(WORDS[fault.code], 'value' in fault ? { value: fault.value } : {})
}
