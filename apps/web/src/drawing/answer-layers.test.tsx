import { nominalSpace } from '@espalier/domain/pitch'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { AnswerLayers } from './answer-layers'
import { lookedPattern as looked } from './looked-pattern.fixture'
import { gapBetween } from './paper-point'
import { PatternDrawing } from './pattern-drawing'
import { sceneAnswers } from './scene-answers'

const space = nominalSpace('us-7v7')
function draw(step: number | undefined, lookId: string | null): string {
  const answers = sceneAnswers(looked, space)
  return renderToStaticMarkup(
    <PatternDrawing
      document={looked}
      space={space}
      medium="desk"
      step={step}
      above={(drawn) => <AnswerLayers {...drawn} answers={answers} lookId={lookId} />}
    />,
  )
}

test('an answer starts where the look leaves the script and ends at who receives it', () => {
  const [a, b] = sceneAnswers(looked, space)
  expect([a?.letter, b?.letter]).toEqual(['A', 'B'])
  expect(a?.steps.map((step) => step.stepId)).toEqual(['a1'])
  expect(a?.steps[0]).toMatchObject({ actor: 'RCB', receiver: 'RW' })
  expect(gapBetween(a!.steps[0]!.ball!.from, b!.steps[0]!.ball!.from)).toBe(0)
})

test('with several looks a letter says before which step its look is', () => {
  const second = { ...looked.looks[0]!, lookId: 'l2', stepId: 's4', by: 'CM' }
  const both = { ...looked, looks: [...looked.looks, second] }
  expect(sceneAnswers(both, space).map(({ letter }) => letter)).toEqual(['3A', '3B', '4A', '4B'])
})

test('each answer has one letter and a finely dashed way, strong while its look is read and faint else', () => {
  const read = draw(2, 'l1')
  const other = draw(0, null)
  for (const html of [read, other]) {
    expect([...html.matchAll(/data-answer="(\w+)"/g)].map(([, letter]) => letter)).toEqual(['A', 'B'])
    expect(html.match(/stroke-dasharray="0.43 0.27"/g)).toHaveLength(2)
  }
  expect(read).not.toMatch(/drawing-past" data-answer/)
  expect(other.match(/drawing-past" data-answer/g)).toHaveLength(2)
})

test('on paper all answers are drawn alike', () => {
  expect(draw(undefined, null)).not.toMatch(/drawing-past" data-answer/)
})

test('letters keep clear of one another', () => {
  const at = [...draw(2, 'l1').matchAll(/data-answer="\w+"[^>]* x="([-\d.]+)" y="([-\d.]+)"/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }))
  expect(at).toHaveLength(2)
  expect(gapBetween(at[0]!, at[1]!)).toBeGreaterThan(2)
})
