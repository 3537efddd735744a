import type { Examples } from '../example'
import { TextAreaField } from './text-area-field'
import { TextField } from './text-field'

export const textFieldExamples = {
  plain: <TextField name="example/venue" label="Venue" />,
  'with a hint': <TextField name="example/shortName" label="Short name" hint="As the children call each other." />,
  wrong: (
    <TextField
      name="example/title"
      label="Title"
      hint="One line."
      defaultValue=" "
      wrong="Give it a title of one line."
    />
  ),
  'of several lines': <TextAreaField name="example/why" label="Why" defaultValue="It frees the far side." />,
} satisfies Examples
