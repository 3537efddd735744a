import { mirrorPattern, type PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace, spaceRectangle } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'
import type { ReactElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { drawingExamples } from './drawing.examples'
import { LEGEND_ITEMS, type LegendItem } from './legend'
import { markSizes } from './mark-sizes'
import { examplePattern } from './pattern.fixture'
import { PatternDrawing, patternInWords, patternLegend, stepCrop } from './pattern-drawing'
import { patternScene } from './pattern-scene'
import { exampleHalf, exampleStops } from './set-out.fixture'
import { walkedStops } from './set-out-drawing'

const pitch = nominalSpace('us-7v7')
const examples: readonly (readonly [string, ReactElement])[] = Object.entries(drawingExamples)
const draw = (element: ReactElement) => renderToStaticMarkup(element)
const withoutLegend = (html: string) => html.slice(0, html.indexOf('</svg>'))

test.each(examples)('%s has a name, no inline style and no colour of its own', (_, element) => {
  const html = draw(element)
  const labelledBy = /role="img" aria-labelledby="([^" ]+)/.exec(html)?.[1]
  expect(html).toMatch(new RegExp(`<title id="${labelledBy}">[^<]+</title>`))
  expect(html).not.toContain('style=')
  expect(html).not.toMatch(/(fill|stroke)="(?!none)/)
})

test.each(examples)('%s holds no number that is none', (_, element) => {
  expect(draw(element)).not.toMatch(/NaN|undefined|Infinity/)
})

test('everybody has exactly one solid ring, wherever the ball is later met', () => {
  for (const step of examplePattern.steps.keys()) {
    const html = withoutLegend(
      draw(<PatternDrawing document={examplePattern} space={pitch} medium="desk" step={step} />),
    )
    expect(html.match(/class="drawing-own"/g)).toHaveLength(examplePattern.positions.length)
  }
})

test('only the step being read is drawn strong and washed', () => {
  const html = withoutLegend(draw(<PatternDrawing document={examplePattern} space={pitch} medium="desk" step={2} />))
  // Step 3: one ball, one run.
  expect(html.match(/class="drawing-wash"/g)).toHaveLength(2)
  expect(html.match(/class="drawing-trail"/g)).toHaveLength(2)
  expect(html.match(/class="drawing-trail drawing-past"/g)).toHaveLength(6)
})

test('on paper all steps are drawn alike and nothing is washed', () => {
  const html = draw(drawingExamples['a pattern on paper, all steps'])
  expect(html).not.toContain('drawing-wash')
  expect(html).not.toContain('drawing-trail drawing-past')
})

test('the ball has a filled head and a body an open one', () => {
  const html = withoutLegend(draw(drawingExamples['a pattern on paper, all steps']))
  const trails = [...html.matchAll(/data-trail="(\w+)">(.*?)<\/g>/g)]
  expect(trails).toHaveLength(8)
  for (const [, kind, inside] of trails) expect(inside?.includes('drawing-head')).toBe(kind !== 'run')
})

test('who receives after running is drawn receiving at the end of the run', () => {
  const scene = patternScene(examplePattern, pitch)
  const [, second, third] = scene.steps
  expect(third?.ball?.to).toEqual(second?.runs[0]?.to)
  expect(third?.ball?.from).toEqual(second?.ball?.to)
})

test('who sets off only when the ball is there receives at the old place', () => {
  const later: PatternDocument = {
    ...examplePattern,
    steps: examplePattern.steps.slice(0, 1).map((step) => ({
      ...step,
      runs: [
        {
          position: 'RCB',
          to: { landmark: 'halfway-right', upMm: millimetres(0), rightMm: millimetres(0) },
          start: 'after-the-ball',
        },
      ],
    })),
  }
  const scene = patternScene(later, pitch)
  expect(scene.steps[0]?.ball?.to).toEqual(scene.places[0]?.get('RCB'))
})

test('a mirrored pattern is the same drawing across the middle', () => {
  const here = patternScene(examplePattern, pitch).steps
  const there = patternScene(mirrorPattern(examplePattern), pitch).steps
  for (const [index, step] of here.entries()) {
    expect(there[index]?.ball?.to.y).toBeCloseTo(step.ball?.to.y ?? Number.NaN, 6)
    expect(there[index]?.ball?.to.x).toBeCloseTo(-(step.ball?.to.x ?? Number.NaN), 6)
  }
})

test('the legend names what the drawing uses and nothing else', () => {
  const items = patternLegend(patternScene(examplePattern, pitch), null, markSizes('desk', spaceRectangle(pitch)))
  const expected: readonly LegendItem[] = [
    'own',
    'ghost',
    'opponent',
    'ball',
    'pass',
    'air',
    'run',
    'carry',
    'shot',
    'pole',
  ]
  expect(LEGEND_ITEMS.filter((item) => items.includes(item))).toEqual(expected)
})

test('the drawing in words names every player, every obstacle and every step', () => {
  const words = patternInWords(examplePattern)
  expect(words).toHaveLength(7 + 2 + 5)
  expect(words.join(' ')).toContain('RCB')
  const html = draw(drawingExamples['a pattern on paper, all steps'])
  for (const sentence of words) expect(html).toContain(sentence.replaceAll("'", '&#x27;'))
})

test('a crop holds all that its step uses and stays on the pitch', () => {
  const scene = patternScene(examplePattern, pitch)
  for (const [index, step] of scene.steps.entries()) {
    const crop = stepCrop(scene, index, pitch)
    for (const place of [step.ball?.from, step.ball?.to]) {
      expect(-(place?.y ?? Number.NaN)).toBeGreaterThanOrEqual(crop.near)
      expect(-(place?.y ?? Number.NaN)).toBeLessThanOrEqual(crop.far)
    }
    expect(crop.near).toBeGreaterThanOrEqual(0)
  }
})

test('the drawn walk passes every stop and has a tick for every pace', () => {
  const walked = walkedStops(exampleStops)
  for (const { at, legs } of walked) {
    const end = legs.at(-1)?.to
    if (end !== undefined) expect(Math.hypot(end.x - at.x, end.y - at.y)).toBeLessThanOrEqual(0.4 * Math.SQRT2)
  }
  const html = draw(drawingExamples['a set-out walk, stop 3 next'])
  expect(html).toContain('The set-out walk, 53 paces')
})

test('stops before the next are done, the next is accented, later ones are outlined', () => {
  const html = draw(drawingExamples['a set-out walk, stop 3 next'])
  expect(html.match(/drawing-tag drawing-tag-done/g)).toHaveLength(2)
  expect(html.match(/drawing-tag drawing-tag-here/g)).toHaveLength(1)
  expect(html.match(/class="drawing-tag"/g)).toHaveLength(1)
})

test('each area says its own measures, in the drawing and in words', () => {
  const html = draw(drawingExamples['areas on a field without lines'])
  expect(html).toContain('1: 9.5 × 9 m')
  expect(html).toContain('9.5 m wide and 9 m long')
  expect(html).toContain('2: 12 × 14 m')
})

test('on a space that ends before the pattern does, the ball goes out through a gate and nothing is drawn beyond', () => {
  const scene = patternScene(examplePattern, exampleHalf)
  expect(scene.cut?.stepIndex).toBe(3)
  expect(scene.cut?.at.y).toBeCloseTo(-27.43, 6)
  expect(scene.steps.slice(4).every((step) => step.ball === null && step.runs.length === 0)).toBe(true)
  const shown = [
    ...scene.places.flatMap((places) => [...places.values()]),
    ...scene.steps.flatMap((step) => [
      step.ball?.from,
      step.ball?.to,
      ...step.runs.flatMap((run) => [run.from, run.to]),
    ]),
  ]
  for (const place of shown) if (place !== undefined) expect(-place.y).toBeLessThanOrEqual(27.43 + 1e-6)
  expect(patternInWords(examplePattern, scene).at(-1)).toContain('step 4 goes out through a gate')
})

test('on the pitch it was drawn for a pattern is not cut', () => {
  expect(patternScene(examplePattern, pitch).cut).toBeNull()
})

test('marks keep their size on the smallest pitches and grow with larger ones, at most to double', () => {
  const ring = (space: Parameters<typeof spaceRectangle>[0]) => markSizes('desk', spaceRectangle(space)).ringRadius
  expect(ring(exampleHalf)).toBe(1.35)
  expect(ring(nominalSpace('ifab-11v11'))).toBeGreaterThan(2)
  expect(ring(nominalSpace('ifab-11v11'))).toBeLessThanOrEqual(2.7)
})
