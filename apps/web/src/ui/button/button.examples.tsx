import type { Examples } from '../example'
import { Button } from './button'
import { ButtonLink } from './button-link'

export const buttonExamples = {
  'the next press': <Button kind="next">Start setting out</Button>,
  plain: <Button>Change</Button>,
  quiet: <Button kind="quiet">Undo</Button>,
  'off, with the reason': <Button offBecause="Two notes are still to fix.">Publish version 5</Button>,
  'a link as a press': <ButtonLink href="/">Go to home</ButtonLink>,
} satisfies Examples
