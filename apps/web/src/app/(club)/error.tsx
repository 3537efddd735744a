'use client'

import { shellMessage } from '../../messages/shell'
import { pages } from '../../paths'
import { Button } from '../../ui/button/button'
import { ButtonLink } from '../../ui/button/button-link'
import { PageFrame } from '../../ui/page-frame/page-frame'

type ErrorPageProps = { readonly error: Error & { readonly digest?: string } }

/** A page that could not be made: what is known, without any inside of the program. */
export default function ErrorPage({ error }: ErrorPageProps) {
  return (
    <PageFrame
      title={shellMessage('failed')}
      lead={<p>{shellMessage('failedLead')}</p>}
      owner={{ title: shellMessage('product'), href: pages.home }}
      words={{ skip: shellMessage('skip'), where: shellMessage('where') }}
    >
      <p className="flex flex-wrap gap-4">
        <Button onClick={() => window.location.reload()}>{shellMessage('failedNext')}</Button>
        <ButtonLink href={pages.home} kind="quiet">
          {shellMessage('goHome')}
        </ButtonLink>
      </p>
      {error.digest !== undefined && (
        <p className="text-small text-ink-soft">{shellMessage('failedNumber', { number: error.digest })}</p>
      )}
    </PageFrame>
  )
}
