import { describe, expect, test } from 'vitest'
import { formOfSpace, newSpaceForm, spaceOfForm, withKind } from './space-form'

describe('the form of a space', () => {
  test('reads lengths with a point or a comma as whole millimetres', () => {
    const reading = spaceOfForm({ ...newSpaceForm('us-7v7'), length: '36,6', width: '27.43' })
    expect(reading).toMatchObject({ ok: true, space: { lengthMm: 36_600, widthMm: 27_430 } })
  })

  test('takes a half that is wider than long', () => {
    const half = withKind(newSpaceForm('us-7v7'), 'half', 'us-7v7')
    const reading = spaceOfForm(half)
    if (!reading.ok) throw new Error('the usual half must be readable')
    expect(reading.space.widthMm).toBeGreaterThan(reading.space.lengthMm)
    expect(reading.space.goals).toEqual([expect.objectContaining({ end: 'own' })])
  })

  test('plain grass starts without lines and goals', () => {
    const reading = spaceOfForm(withKind(newSpaceForm('us-9v9'), 'plain', 'us-9v9'))
    if (!reading.ok) throw new Error('plain grass must be readable')
    expect(reading.space.goals).toEqual([])
    expect(new Set(Object.values(reading.space.markings))).toEqual(new Set(['none']))
  })

  test('names every length that cannot be read', () => {
    const form = { ...newSpaceForm('us-7v7'), length: '4.9', width: 'wide', ownGoal: '9', farGoal: '' }
    expect(spaceOfForm(form)).toEqual({ ok: false, wrong: ['length', 'width', 'ownGoal'] })
  })

  test('shows a kept space as it was kept', () => {
    const reading = spaceOfForm({ ...newSpaceForm('ifab-11v11'), name: 'pitch 1', venue: 'Mill Lane', movable: true })
    if (!reading.ok) throw new Error('the nominal pitch must be readable')
    expect(spaceOfForm(formOfSpace(reading.space))).toEqual(reading)
  })
})
