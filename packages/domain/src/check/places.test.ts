import { describe, expect, test } from 'vitest'
import { FORMAT_IDS } from '../formats'
import { checkShape } from '../pattern'
import { passStep, samplePattern, spotAt } from '../pattern/fixtures/sample-pattern'
import { landmarkPoint, nearestSpot, nominalSpace } from '../pitch'
import { checkPattern } from './check-pattern'
import { spotFor } from './places'
import { applyRemedy } from './remedy'

/** A run too long for the pass, past where a smaller format has its build-out lines; this one has none. */
const late = {
  ...samplePattern,
  formatId: 'us-9v9',
  formation: '3-2-3',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 3) },
    { position: 'RCB', spot: spotAt('penalty-area-top', 2) },
    { position: 'CM', spot: spotAt('penalty-area-corner-left') },
  ],
  steps: [
    {
      ...passStep('s1', 'RCB', 'CM'),
      runs: [{ position: 'CM', to: spotAt('far-penalty-area-corner-right', 0), start: 'before-the-ball' }],
    },
  ],
  restart: 'open-play',
  obstacles: [],
  targets: [],
  looks: [],
} as const

describe('a spot that a remedy names', () => {
  test('hangs on a landmark of the document’s format, also on a space measured for another', () => {
    const place = landmarkPoint(nominalSpace('us-7v7'), 'build-out-line-centre')!
    expect(nearestSpot(nominalSpace('us-7v7'), place).landmark).toBe('build-out-line-centre')
    for (const formatId of FORMAT_IDS) {
      const { landmark } = spotFor({ ...samplePattern, formatId }, nominalSpace('us-7v7'), place)
      expect(landmarkPoint(nominalSpace(formatId), landmark)).not.toBeNull()
    }
  })

  test('can be written into the document and saved', () => {
    const remedies = checkPattern(late, nominalSpace('us-7v7')).notes.flatMap((note) => note.remedy ?? [])
    expect(remedies.map((remedy) => remedy.kind)).toContain('meet-at')
    for (const remedy of remedies) expect(checkShape(applyRemedy(late, remedy))).toEqual([])
  })
})
