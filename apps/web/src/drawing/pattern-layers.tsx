import type { Position } from '@espalier/domain/pattern'
import { unreachable } from '@espalier/domain/quantities'
import type { ReactNode } from 'react'
import { labelPlace, placeAround, reachOfShaft } from './label-place'
import { type MarkSizes, STROKES } from './mark-sizes'
import { BallMark, ConeMark, GateMark, OpponentMark, OwnMark, PoleMark, SmallGoalMark } from './marks'
import { attribute, directionTo, offset, type PaperPoint } from './paper-point'
import type { PatternScene, SceneTarget } from './pattern-scene'
import { patternRings, patternShafts, type Ring, type StepShafts } from './pattern-shafts'
import { Trail, Wash } from './trail'

export type PatternLetter = { readonly letter: string; readonly stepId: string }

export type PatternLayersProps = {
  readonly scene: PatternScene
  /** The step being read, from 0; null where all are drawn alike, as on paper. */
  readonly reading: number | null
  readonly sizes: MarkSizes
  /** Ties a place on the drawing to a note: a, b, c at the end of their step's ball. */
  readonly letters?: readonly PatternLetter[]
  /** Who plays there tonight, outside the ring. */
  readonly names?: Readonly<Record<Position, string>>
}

/** Everything of a pattern above the lines, back to front: wash, paths, obstacles, rings, ball, numbers. */
export function PatternLayers({ scene, reading, sizes, letters = [], names = {} }: PatternLayersProps): ReactNode {
  const rings = patternRings(scene, reading, sizes)
  const shafts = patternShafts(scene, rings, sizes)
  const current = reading === null ? undefined : shafts[reading]
  const others = shafts.filter((each) => each !== current)
  const ball = scene.steps[reading ?? 0]?.ball ?? null
  return (
    <>
      {current?.ball && <Wash shaft={current.ball.shaft} sizes={sizes} />}
      {current?.runs.map((shaft) => (
        <Wash key={`${shaft.start.x} ${shaft.start.y}`} shaft={shaft} sizes={sizes} />
      ))}
      {others.map((each) => (
        <StepTrails key={each.step.stepId} shafts={each} state={reading === null ? 'now' : 'past'} sizes={sizes} />
      ))}
      {current !== undefined && <StepTrails shafts={current} state="now" sizes={sizes} />}
      <Surroundings scene={scene} sizes={sizes} />
      {rings.map((ring) => (
        <OwnMark key={`${ring.position} ${ring.state} ${ring.at.x} ${ring.at.y}`} {...ring} sizes={sizes} />
      ))}
      {ball !== null && <BallMark at={ballAtFeet(ball.from, ball.to, sizes)} sizes={sizes} />}
      <StepNumbers shafts={shafts} rings={rings} reading={reading} sizes={sizes} />
      <Letters shafts={shafts} rings={rings} letters={letters} sizes={sizes} />
      <Names rings={rings} names={names} sizes={sizes} />
    </>
  )
}

type StepTrailsProps = { readonly shafts: StepShafts; readonly state: 'now' | 'past'; readonly sizes: MarkSizes }

function StepTrails({ shafts, state, sizes }: StepTrailsProps) {
  return (
    <>
      {shafts.runs.map((shaft) => (
        <Trail key={`${shaft.start.x} ${shaft.start.y}`} kind="run" shaft={shaft} state={state} sizes={sizes} />
      ))}
      {shafts.ball !== null && <Trail {...shafts.ball} state={state} sizes={sizes} />}
    </>
  )
}

function Surroundings({ scene, sizes }: { readonly scene: PatternScene; readonly sizes: MarkSizes }) {
  return (
    <>
      {scene.obstacles.map((obstacle) => (
        <ObstacleMark key={obstacle.id} obstacle={obstacle} sizes={sizes} />
      ))}
      {scene.targets.map((target) => (
        <TargetMark key={target.id} target={target} sizes={sizes} />
      ))}
      {scene.cut !== null && <GateMark at={scene.cut.at} width={GATE_WIDTH} sizes={sizes} />}
    </>
  )
}

/** The gate a cut pattern ends at, in metres: as wide as the club's usual target for reach. Common practice, no source. */
const GATE_WIDTH = 3

type ObstacleMarkProps = { readonly obstacle: PatternScene['obstacles'][number]; readonly sizes: MarkSizes }

function ObstacleMark({ obstacle: { kind, at }, sizes }: ObstacleMarkProps) {
  switch (kind) {
    case 'opponent':
      return <OpponentMark at={at} sizes={sizes} />
    case 'pole':
      return <PoleMark at={at} sizes={sizes} />
    case 'cone':
      return <ConeMark at={at} sizes={sizes} />
    default:
      return unreachable(kind)
  }
}

function TargetMark({
  target: { kind, at, width },
  sizes,
}: {
  readonly target: SceneTarget
  readonly sizes: MarkSizes
}) {
  switch (kind) {
    // The goal itself is one of the pitch's lines.
    case 'goal':
      return null
    case 'small-goal':
      return <SmallGoalMark at={at} width={width} mouth="down" />
    case 'gate':
      return <GateMark at={at} width={width} sizes={sizes} />
    default:
      return unreachable(kind)
  }
}

/** On the edge of its player's ring, on the side it will leave. */
function ballAtFeet(from: PaperPoint, to: PaperPoint, sizes: MarkSizes): PaperPoint {
  return offset(from, directionTo(from, to), sizes.ringRadius)
}

type StepNumbersProps = {
  readonly shafts: readonly StepShafts[]
  readonly rings: readonly Ring[]
  readonly reading: number | null
  readonly sizes: MarkSizes
}

function StepNumbers({ shafts, rings, reading, sizes }: StepNumbersProps) {
  const taken = rings.map(({ at }) => ({ at, reach: sizes.ringRadius }))
  return shafts.map(({ step, ball }, index) => {
    if (ball === null) return null
    const size = index === reading ? sizes.numberActing : sizes.number
    const foreign = shafts.flatMap((each) => [
      ...(each.ball === null || each.ball === ball ? [] : reachOfShaft(each.ball.shaft)),
      ...each.runs.flatMap(reachOfShaft),
    ])
    const at = labelPlace(ball.shaft, size * 0.85, [...taken, ...foreign])
    taken.push({ at, reach: size / 2 })
    const faint = reading !== null && index !== reading
    return (
      <text
        key={step.stepId}
        className={faint ? 'drawing-number drawing-halo drawing-past' : 'drawing-number drawing-halo'}
        strokeWidth={attribute(STROKES.halo * sizes.unit)}
        fontSize={attribute(size)}
        x={attribute(at.x)}
        y={attribute(at.y + size * 0.35)}
      >
        {step.number}
      </text>
    )
  })
}

type LettersProps = {
  readonly shafts: readonly StepShafts[]
  readonly rings: readonly Ring[]
  readonly letters: readonly PatternLetter[]
  readonly sizes: MarkSizes
}

function Letters(props: LettersProps) {
  const size = letterSize(props.sizes)
  return letterPlaces(props).map(({ letter, stepId, at }) => (
    <text
      key={`${letter} ${stepId}`}
      className="drawing-letter drawing-halo"
      strokeWidth={attribute(STROKES.halo * props.sizes.unit)}
      fontSize={attribute(size)}
      x={attribute(at.x)}
      y={attribute(at.y + size * 0.3)}
    >
      {letter}
    </text>
  ))
}

/** Beside the place where its step's ball ends, on the side with most room. */
export function letterPlaces({ shafts, rings, letters, sizes }: LettersProps) {
  const taken = [
    ...rings.map(({ at }) => ({ at, reach: sizes.ringRadius })),
    ...shafts.flatMap((each) => [...(each.ball === null ? [] : [each.ball.shaft]), ...each.runs]).flatMap(reachOfShaft),
  ]
  return letters.flatMap(({ letter, stepId }) => {
    const ball = shafts.find(({ step }) => step.stepId === stepId)?.step.ball
    if (ball === undefined || ball === null) return []
    return [{ letter, stepId, at: placeAround(ball.to, sizes.ringRadius + letterSize(sizes) * 0.5, taken) }]
  })
}

export function letterSize(sizes: MarkSizes): number {
  return sizes.number * 1.2
}

type NamesProps = {
  readonly rings: readonly Ring[]
  readonly names: Readonly<Record<Position, string>>
  readonly sizes: MarkSizes
}

function Names({ rings, names, sizes }: NamesProps) {
  return rings.map(({ position, at, state }) => {
    const name = names[position]
    if (name === undefined || state === 'ghost') return null
    return (
      <text
        key={position}
        className="drawing-halo"
        textAnchor="middle"
        strokeWidth={attribute(STROKES.halo * sizes.unit)}
        fontSize={attribute(sizes.label)}
        x={attribute(at.x)}
        y={attribute(at.y + sizes.ringRadius + sizes.label * 0.95)}
      >
        {name}
      </text>
    )
  })
}
