import { point } from '@espalier/domain/geometry'
import { nominalSpace, pitchMarkings } from '@espalier/domain/pitch'
import { metres } from '@espalier/domain/quantities'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { arcPath, PitchLines } from './pitch-lines'

test('the team attacks up the page: a place up the pitch and to the right has a small y and a large x', () => {
  const quarter = {
    kind: 'arc',
    marking: 'corner-arc',
    finding: 'painted',
    centre: point(0, 0),
    radius: metres(2),
  } as const
  expect(arcPath({ ...quarter, fromDegrees: 0, toDegrees: 90 })).toBe('M0 -2A2 2 0 0 1 2 0')
})

test('more than half a turn is drawn the long way round', () => {
  const arc = {
    kind: 'arc',
    marking: 'centre-circle',
    finding: 'painted',
    centre: point(0, 0),
    radius: metres(2),
  } as const
  expect(arcPath({ ...arc, fromDegrees: -135, toDegrees: 135 })).toContain('0 1 1')
})

test('every marking of a pitch is drawn, and the build-out lines are dashed', () => {
  const markings = pitchMarkings(nominalSpace('us-7v7'))
  const html = renderToStaticMarkup(
    <svg>
      <title>lines</title>
      <PitchLines markings={markings} />
    </svg>,
  )
  expect(html.match(/<(path|rect|circle)\b/g)).toHaveLength(markings.length)
  expect(html.match(/stroke-dasharray/g)).toHaveLength(2)
})

test('what is drawn as none is the edge of a space without lines, and looks like one', () => {
  const space = nominalSpace('us-7v7')
  const bare = {
    ...space,
    covers: 'plain' as const,
    goals: [],
    markings: { ...space.markings, boundary: 'none' as const },
  }
  const html = renderToStaticMarkup(
    <svg>
      <title>lines</title>
      <PitchLines markings={pitchMarkings(bare).slice(0, 1)} />
    </svg>,
  )
  expect(html).toContain('drawing-edge')
})
