import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { AlreadySignedIn } from './already-signed-in'

test('whoever is signed in here already is named, with each club, and what the press would do', () => {
  const html = renderToStaticMarkup(
    <AlreadySignedIn
      signedInAs={[
        { clubId: 'a', name: 'Ida Example', club: 'Larch Lane' },
        { clubId: 'b', name: 'Ida E.', club: 'Mill End' },
      ]}
    />,
  )
  expect(html).toContain('You are signed in here as Ida Example, Larch Lane.')
  expect(html).toContain('You are signed in here as Ida E., Mill End.')
  expect(html).toContain('Pressing signs you in as the link&#x27;s person instead.')
})

test('where nobody is signed in nothing is said', () => {
  expect(renderToStaticMarkup(<AlreadySignedIn signedInAs={[]} />)).toBe('')
})
