import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { ActionForm } from './action-form'
import { changePattern } from './edit-pattern'
import { PatternReader } from './pattern-reader'
import { readPattern } from './pattern-reading'
import { PatternSheet } from './pattern-sheet'
import { PlacesForm, SurroundingsForm } from './places-form'
import { StepForm } from './step-form'
import { findStep } from './step-path'
import { TeachingForm, wordsOf } from './teaching-form'

const CHOICES = { penaltyMarkYards7v7: 10 } as const
const ignore = () => undefined
const looked = changePattern(examplePattern, { kind: 'add-look', stepId: 's3' })

test('every step is a press in the order of the script, and the one being read says so', () => {
  const reading = readPattern(examplePattern, CHOICES)
  const html = renderToStaticMarkup(<PatternSheet reading={reading} choices={CHOICES} stepId="s2" onRead={ignore} />)
  expect([...html.matchAll(/data-step="(\w+)"/g)].map(([, id]) => id)).toEqual(['s1', 's2', 's3', 's4', 's5'])
  expect(html.match(/aria-pressed="true"/g)).toHaveLength(1)
  expect(html).toMatch(/aria-pressed="true" data-step="s2"/)
})

test('a note stands after its step and before the next, with its word, its source and its letter in the sentence', () => {
  const reading = readPattern(examplePattern, CHOICES)
  const html = renderToStaticMarkup(<PatternSheet reading={reading} choices={CHOICES} stepId={null} onRead={ignore} />)
  for (const note of reading.notes) {
    const at = html.indexOf(note.sentence)
    const own = html.indexOf(`data-step="${note.stepId}"`)
    expect(at).toBeGreaterThan(own)
    expect(html.slice(own, at)).toContain(`${note.letter}</sup>`)
    expect(html.slice(at)).toContain(note.origin.word)
  }
})

test('whoever reads gets no blank to fill, and sees looks with their answers', () => {
  const html = renderToStaticMarkup(<PatternReader document={looked} choices={CHOICES} />)
  // For whom and on what ground it is checked is chosen by whoever reads; nothing of the pattern is.
  const blanks = [...html.matchAll(/<(?:select|input|textarea)[^>]*>/g)].map(
    ([blank]) => /aria-label="([^"]*)"/.exec(blank)?.[1],
  )
  expect(blanks).toEqual(['Age of the players it is checked for', 'Ground it is checked on'])
  expect(html).toContain('Before this, RCB looks.')
  expect(html).toContain('That is the way out.')
  expect(html).not.toContain('style=')
})

test('a page checked with values of the club’s own says how many', () => {
  const choices = { ...CHOICES, profiles: { U10: { reaction: 300 } } }
  const words = 'One value of this profile is the club'
  expect(renderToStaticMarkup(<PatternReader document={looked} choices={choices} />)).toContain(words)
  expect(renderToStaticMarkup(<PatternReader document={looked} choices={CHOICES} />)).not.toContain(words)
})

test('every blank of a step has a name, and impossible choices stay with their reason', () => {
  const found = findStep(examplePattern, 's3')!
  const html = renderToStaticMarkup(<StepForm document={examplePattern} found={found} onChange={ignore} />)
  const blanks = html.match(/<(select|input)[^>]*>/g) ?? []
  expect(blanks.length).toBeGreaterThan(6)
  for (const blank of blanks) expect(blank).toMatch(/aria-label="[^"]+"/)
  expect(html).toMatch(/<option value="RW" disabled="">RW \(RCB has the ball\)<\/option>/)
  expect(html).toContain('5 of 6 words')
})

test('a shot asks for its target and for nothing a shot has not', () => {
  const found = findStep(examplePattern, 's5')!
  const html = renderToStaticMarkup(<ActionForm document={examplePattern} found={found} onChange={ignore} />)
  expect(html).toContain('aria-label="At what"')
  expect(html).not.toContain('aria-label="Who gets it"')
  expect(html).not.toContain('aria-label="Touches"')
})

test('every place says where it comes to lie', () => {
  const html = renderToStaticMarkup(<PlacesForm document={examplePattern} onChange={ignore} />)
  expect(html.match(/m up the pitch, /g)).toHaveLength(7)
  expect(renderToStaticMarkup(<SurroundingsForm document={examplePattern} onChange={ignore} />)).toContain('pole')
})

test('the teaching form names what publishing still waits for', () => {
  const html = renderToStaticMarkup(<TeachingForm document={examplePattern} onChange={ignore} />)
  expect(html).toContain('mistake 1')
  expect(html.match(/<label/g)?.length).toBeGreaterThanOrEqual(11)
})

test('call words are read from what is typed, at most twelve of at most 24 letters', () => {
  expect(wordsOf(' turn, , man on ,')).toEqual(['turn', 'man on'])
  expect(wordsOf(Array.from({ length: 20 }, (_, index) => `w${index}`).join(','))).toHaveLength(12)
  expect(wordsOf('x'.repeat(40))[0]).toHaveLength(24)
})
