import type { Kit } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'

type CautionsProps = { readonly kit: Kit; readonly adults: number; readonly withSources?: boolean }

/** The usual cautions; local rules decide, and the club's own welfare officer is named. */
export function Cautions({ kit, adults, withSources = false }: CautionsProps) {
  const settings = kit.adopted?.content.settings
  const officer = settings?.welfareOfficer ?? ''
  return (
    <>
      <p>
        {settings !== undefined && adults < settings.adultsRequired && (
          <strong>{tonightMessage('adultsShort', { required: settings.adultsRequired, there: adults })} </strong>
        )}
        {tonightMessage('cautions')}
      </p>
      <p className="font-semibold">
        {officer === '' ? tonightMessage('welfareNone') : tonightMessage('welfare', { officer })}
      </p>
      {withSources && <p className="text-small text-ink-soft">{tonightMessage('cautionSources')}</p>}
    </>
  )
}
