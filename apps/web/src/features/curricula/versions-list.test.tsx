import type { VersionSummary } from '@espalier/contract/curricula'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { VersionsList } from './versions-list'

const version = (number: number, offered: boolean): VersionSummary => ({
  number,
  publishedAt: '2026-09-01T16:05:00.000Z',
  publishedBy: 'Bram Tarrow',
  contentHash: `${number}`.repeat(64),
  entryId: `0000000${number}-0000-7000-8000-000000000000`,
  offered,
  signature: 'pending',
})

test('versions stand newest first with hash, time in the club’s zone, signature and entry', () => {
  const html = renderToStaticMarkup(
    <VersionsList clubId="c" curriculumId="k" zone="Europe/Madrid" versions={[version(1, false), version(2, true)]} />,
  )
  expect([...html.matchAll(/versions\/(\d)"/g)].map(([, number]) => number)).toEqual(['2', '1'])
  expect(html).toContain('Hash 222222222222 …')
  expect(html).toContain('2'.repeat(64))
  expect(html).toContain('Published by Bram Tarrow on 1 September 2026, 18:05')
  expect(html.match(/signature pending/g)).toHaveLength(2)
  expect(html).toContain('href="/clubs/c/record-book"')
  expect(html).toContain('00000002-0000-7000-8000-000000000000')
  expect(html.match(/offered to teams/g)).toHaveLength(1)
})
