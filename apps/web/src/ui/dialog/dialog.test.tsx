import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { Dialog } from './dialog'

test('a dialog is named by its title, closed until opened by script, and has a way out', () => {
  const html = renderToStaticMarkup(
    <Dialog open title="Cancel the evening?" closeLabel="Keep it" onClose={() => {}}>
      <p>Stages move on.</p>
    </Dialog>,
  )
  const labelledBy = /aria-labelledby="([^"]+)"/.exec(html)?.[1]
  expect(html).toContain(`<h2 id="${labelledBy}"`)
  expect(html).toContain('Keep it</button>')
  // Opened in the markup it would not be modal: the page behind could still be used.
  expect(html).not.toMatch(/<dialog[^>]*\sopen/)
})
