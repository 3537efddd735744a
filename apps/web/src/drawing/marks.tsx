import { pointsAttribute } from './arrow'
import { type MarkSizes, positionTextSize } from './mark-sizes'
import { attribute, type PaperPoint, pathPlace } from './paper-point'

type MarkProps = { readonly at: PaperPoint; readonly sizes: MarkSizes }

/** Letters sit on their baseline a little above a third of their height below the middle. */
const BASELINE = 0.35

type OwnMarkProps = MarkProps & {
  readonly position: string
  /** Acting: plays or runs in the step being read. Ghost: where the ball will be met, never a second solid ring. */
  readonly state?: 'standing' | 'acting' | 'ghost'
}

/** An own player: a ring with the position inside. */
export function OwnMark({ at, sizes, position, state = 'standing' }: OwnMarkProps) {
  const size = positionTextSize(sizes, position)
  const outline =
    state === 'acting' ? sizes.ringOutlineActing : state === 'ghost' ? sizes.ringOutline / 2 : sizes.ringOutline
  return (
    <g className={state === 'ghost' ? 'drawing-own drawing-ghost' : 'drawing-own'}>
      <circle
        cx={attribute(at.x)}
        cy={attribute(at.y)}
        r={attribute(sizes.ringRadius)}
        strokeWidth={attribute(outline)}
      />
      <text x={attribute(at.x)} y={attribute(at.y + size * BASELINE)} fontSize={attribute(size)}>
        {position}
      </text>
    </g>
  )
}

/** A live opponent: X. */
export function OpponentMark({ at, sizes }: MarkProps) {
  const { crossArm: arm } = sizes
  const corners = [
    [-arm, -arm, arm, arm],
    [-arm, arm, arm, -arm],
  ] as const
  return (
    <path
      className="drawing-opponent"
      strokeWidth={attribute(sizes.crossStroke)}
      d={corners
        .map(
          ([x1, y1, x2, y2]) =>
            `M${pathPlace({ x: at.x + x1, y: at.y + y1 })}L${pathPlace({ x: at.x + x2, y: at.y + y2 })}`,
        )
        .join('')}
    />
  )
}

export function BallMark({ at, sizes }: MarkProps) {
  return (
    <circle
      className="drawing-ball"
      cx={attribute(at.x)}
      cy={attribute(at.y)}
      r={attribute(sizes.ballRadius)}
      strokeWidth={attribute(sizes.ballEdge)}
    />
  )
}

export function PoleMark({ at, sizes }: MarkProps) {
  return (
    <rect
      className="drawing-solid"
      x={attribute(at.x - sizes.poleWidth / 2)}
      y={attribute(at.y - sizes.poleLength / 2)}
      width={attribute(sizes.poleWidth)}
      height={attribute(sizes.poleLength)}
    />
  )
}

export function ConeMark({ at, sizes }: MarkProps) {
  const half = sizes.coneWidth / 2
  // The middle of the triangle's base and tip lies on the place, so that cones line up with lines.
  const top = at.y - sizes.coneHeight * 0.6
  const bottom = at.y + sizes.coneHeight * 0.4
  return (
    <polygon
      className="drawing-cone"
      strokeWidth={attribute(sizes.coneOutline)}
      points={pointsAttribute([
        { x: at.x, y: top },
        { x: at.x + half, y: bottom },
        { x: at.x - half, y: bottom },
      ])}
    />
  )
}

export type Mouth = 'up' | 'down' | 'left' | 'right'

const QUARTER_TURNS = { up: 180, right: 270, down: 0, left: 90 } as const satisfies Record<Mouth, number>

/** A small goal from above: two posts and a back, open where its mouth looks. */
export function SmallGoalMark({
  at,
  width,
  mouth,
}: {
  readonly at: PaperPoint
  readonly width: number
  readonly mouth: Mouth
}) {
  const half = attribute(width / 2)
  return (
    <path
      className="drawing-small-goal"
      transform={`translate(${pathPlace(at)}) rotate(${QUARTER_TURNS[mouth]})`}
      d={`M-${half} 0V-1.1H${half}V0`}
    />
  )
}

/** A gate: two cones with the way through between them. */
export function GateMark({ at, sizes, width }: MarkProps & { readonly width: number }) {
  const half = width / 2
  return (
    <g>
      <path
        className="drawing-gate"
        d={`M${pathPlace({ x: at.x - half, y: at.y })}L${pathPlace({ x: at.x + half, y: at.y })}`}
      />
      <ConeMark at={{ x: at.x - half, y: at.y }} sizes={sizes} />
      <ConeMark at={{ x: at.x + half, y: at.y }} sizes={sizes} />
    </g>
  )
}

/** The coach's bag, where a set-out starts. */
export function BagMark({ at, sizes }: MarkProps) {
  const width = sizes.tag * 1.05
  const height = sizes.tag * 0.7
  return (
    <g className="drawing-bag">
      <polygon
        points={pointsAttribute([
          { x: at.x - width * 0.42, y: at.y - height / 2 },
          { x: at.x + width * 0.42, y: at.y - height / 2 },
          { x: at.x + width / 2, y: at.y + height / 2 },
          { x: at.x - width / 2, y: at.y + height / 2 },
        ])}
      />
      <path
        d={`M${pathPlace({ x: at.x - width / 5, y: at.y - height / 2 })}q${attribute(width / 5)} ${attribute(-height * 0.7)} ${attribute((width * 2) / 5)} 0`}
      />
    </g>
  )
}

/** A bib laid on the grass: half-way along a long leg, or in place of a cone. */
export function BibMark({ at, sizes }: MarkProps) {
  const unit = sizes.coneWidth / 2
  const place = (x: number, y: number) => ({ x: at.x + x * unit, y: at.y + y * unit })
  return (
    <polygon
      className="drawing-cone"
      strokeWidth={attribute(sizes.coneOutline)}
      points={pointsAttribute([
        place(-0.6, -0.9),
        place(-0.3, -0.9),
        place(0, -0.5),
        place(0.3, -0.9),
        place(0.6, -0.9),
        place(0.5, -0.2),
        place(0.85, 0.2),
        place(0.85, 0.9),
        place(-0.85, 0.9),
        place(-0.85, 0.2),
        place(-0.5, -0.2),
      ])}
    />
  )
}
