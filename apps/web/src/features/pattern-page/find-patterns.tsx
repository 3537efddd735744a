import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { TextField } from '../../ui/text-field/text-field'

/** What is looked for stands in the address, so that a found list can be passed on. */
export function FindPatterns({ words }: { readonly words: string }) {
  return (
    <search>
      <form method="get" className="no-print flex flex-wrap items-end gap-3">
        <TextField name="find" type="search" label={patternsMessage('find')} defaultValue={words} maxLength={80} />
        <Button type="submit">{patternsMessage('findPress')}</Button>
      </form>
    </search>
  )
}
