import type { Shaft } from './arrow'
import { placeAround, reachOfShaft, type Taken } from './label-place'
import { LegendSample } from './legend'
import { type MarkSizes, SAMPLE_SIZES, STROKES } from './mark-sizes'
import { OwnMark } from './marks'
import { attribute, gapBetween, type PaperPoint } from './paper-point'
import type { DrawnPattern } from './pattern-drawing'
import { letterPlaces } from './pattern-layers'
import { patternRings, patternShafts, type Ring, type StepShafts } from './pattern-shafts'
import type { SceneAnswer } from './scene-answers'
import { Trail } from './trail'

type AnswerLayersProps = DrawnPattern & {
  readonly answers: readonly SceneAnswer[]
  /** The look whose answers are read now; the others are faint. Null where all are drawn alike, as on paper. */
  readonly lookId: string | null
}

/** The answers of looks over the pattern: a finely dashed way for each ball, and its letter at who receives it. */
export function AnswerLayers({ answers, lookId, ...drawn }: AnswerLayersProps) {
  const { scene, reading, sizes } = drawn
  const rings = patternRings(scene, reading, sizes)
  const drawnSteps = new Set(scene.steps.map((step) => step.stepId))
  const laid = answers.map((answer) => {
    const isNow = reading === null || answer.lookId === lookId
    const shafts = patternShafts({ ...scene, steps: answer.steps }, rings, sizes)
    // The answer that is read is drawn as the pattern's own way already.
    return { answer, isNow, shafts: shafts.filter(({ step }) => !drawnSteps.has(step.stepId)) }
  })
  const letters = lettersOf(drawn, rings, laid)
  return (
    <g>
      {laid.flatMap(({ isNow, shafts }) =>
        shafts.map((each) => <AnswerTrails key={each.step.stepId} shafts={each} isNow={isNow} sizes={sizes} />),
      )}
      {ghostsOf(rings, laid, sizes).map((ring) => (
        <OwnMark key={`${ring.position} ${ring.at.x} ${ring.at.y}`} {...ring} sizes={sizes} />
      ))}
      {letters.map(({ letter, isNow, at }) => (
        <AnswerLetter key={letter} letter={letter} isNow={isNow} at={at} size={answerLetterSize(sizes)} sizes={sizes} />
      ))}
    </g>
  )
}

type Laid = { readonly answer: SceneAnswer; readonly isNow: boolean; readonly shafts: readonly StepShafts[] }

function AnswerTrails({ shafts, isNow, sizes }: { shafts: StepShafts; isNow: boolean; sizes: MarkSizes }) {
  const state = isNow ? 'now' : 'past'
  return (
    <>
      {shafts.runs.map((shaft) => (
        <Trail key={`${shaft.start.x} ${shaft.start.y}`} kind="run" shaft={shaft} state="past" sizes={sizes} />
      ))}
      {shafts.ball !== null && <Trail {...shafts.ball} state={state} sizes={sizes} isAnswer />}
    </>
  )
}

/** Who receives an answer's ball where nobody stands: a thin ring, as for every ball that is met elsewhere. */
function ghostsOf(rings: readonly Ring[], laid: readonly Laid[], sizes: MarkSizes): readonly Ring[] {
  const ghosts: Ring[] = []
  for (const { isNow, shafts } of laid) {
    for (const { step } of shafts) {
      if (!isNow || step.ball === null || step.receiver === null || step.receiver === step.actor) continue
      const { to } = step.ball
      if ([...rings, ...ghosts].some((ring) => gapBetween(ring.at, to) < sizes.ringRadius)) continue
      ghosts.push({ position: step.receiver, at: to, state: 'ghost' })
    }
  }
  return ghosts
}

/** At the end of each answer's first ball, with room from rings, ways, notes' letters and one another. */
function lettersOf({ scene, letters, sizes }: DrawnPattern, rings: readonly Ring[], laid: readonly Laid[]) {
  const shafts = patternShafts(scene, rings, sizes)
  const size = answerLetterSize(sizes)
  const taken: Taken[] = [
    ...rings.map(({ at }) => ({ at, reach: sizes.ringRadius })),
    ...letterPlaces({ shafts, rings, letters, sizes }).map(({ at }) => ({ at, reach: size / 2 })),
    ...[...shafts, ...laid.flatMap((each) => each.shafts)]
      .flatMap((each) => [...(each.ball === null ? [] : [each.ball.shaft]), ...each.runs])
      .flatMap(reachOfShaft),
  ]
  return laid.flatMap(({ answer, isNow }) => {
    const ball = answer.steps[0]?.ball ?? null
    if (ball === null) return []
    const at = placeAround(ball.to, sizes.ringRadius + size * 0.62, taken)
    taken.push({ at, reach: size / 2 })
    return [{ letter: answer.letter, isNow, at }]
  })
}

function answerLetterSize(sizes: MarkSizes): number {
  return sizes.numberActing * 1.05
}

type AnswerLetterProps = {
  readonly letter: string
  readonly isNow: boolean
  readonly at: PaperPoint
  readonly size: number
  readonly sizes: MarkSizes
}

/** Upright and heavy: notes have small slanted letters, steps have numbers. */
function AnswerLetter({ letter, isNow, at, size, sizes }: AnswerLetterProps) {
  return (
    <text
      className={isNow ? 'drawing-number drawing-halo' : 'drawing-number drawing-halo drawing-past'}
      data-answer={letter}
      strokeWidth={attribute(STROKES.halo * sizes.unit)}
      fontSize={attribute(size)}
      x={attribute(at.x)}
      y={attribute(at.y + size * 0.35)}
    >
      {letter}
    </text>
  )
}

const SAMPLE: Shaft = { start: { x: -2.6, y: 0 }, control: null, tip: { x: 1.1, y: 0 } }

/** For the legend of a drawing with answers. */
export function AnswerSample({ words }: { readonly words: string }) {
  return (
    <LegendSample half={2.7} words={words}>
      <Trail kind="pass" shaft={SAMPLE} state="now" sizes={SAMPLE_SIZES} isAnswer />
      <AnswerLetter letter="A" isNow at={{ x: 2, y: 0 }} size={1.8} sizes={SAMPLE_SIZES} />
    </LegendSample>
  )
}
