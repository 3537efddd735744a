import { CheckLine } from '../check-line/check-line'
import type { Examples } from '../example'
import { TextField } from '../text-field/text-field'
import { FieldSet } from './field-set'

export const fieldSetExamples = {
  'fields on one wire': (
    <FieldSet legend="The person" hint="What others in the club see.">
      <TextField name="example/displayName" label="Name" />
      <CheckLine name="example/coach" label="Coaches a team" />
    </FieldSet>
  ),
} satisfies Examples
