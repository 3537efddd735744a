import { tonightMessage } from '../../messages/tonight'
import type { Tonight } from './use-tonight'
import { ViewLink } from './view-link'

/** The way back to tonight's page. */
export function BackLink({ hrefOf }: Pick<Tonight, 'hrefOf'>) {
  return (
    <ViewLink href={hrefOf('tonight')} className="no-print inline-flex min-h-target items-center self-start text-small">
      {tonightMessage('backTonight')}
    </ViewLink>
  )
}
