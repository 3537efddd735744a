import { shellMessage } from '../../messages/shell'
import { pages } from '../../paths'
import { PlainPage } from '../../shell/club-page'
import { ButtonLink } from '../../ui/button/button-link'

/** One answer for what does not exist and what this person may not see. */
export default function NotFound() {
  return (
    <PlainPage title={shellMessage('notFound')} lead={<p>{shellMessage('notFoundLead')}</p>}>
      <p>
        <ButtonLink href={pages.home}>{shellMessage('goHome')}</ButtonLink>
      </p>
    </PlainPage>
  )
}
