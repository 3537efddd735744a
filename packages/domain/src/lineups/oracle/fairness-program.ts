import type { LineupRequest } from '../types'

/** An optimum that an earlier stage found and a later one must keep. */
export type FixedSum = { readonly sumOfSquares: number }

/**
 * The fairness of line-ups as an integer linear program in CPLEX LP text, written without any of the solver's own ideas: one 0–1
 * variable for each child, position and block (`z`), one for the goalkeeper (`g`), and squares as sums of rising unit steps
 * (`u` of a child's blocks, `v` of a child's blocks of one side). Without `fixed` it minimises the first sum, with it the second.
 */
export function fairnessProgram(request: LineupRequest, fixed: FixedSum | null): string {
  const rows: string[] = []
  const binaries = new Set<string>()
  const steps = new Set<string>()
  const goalkeeping = goalkeeperVariables(request)
  for (const name of goalkeeping.values()) binaries.add(name)
  if (request.goalkeeperPosition !== null) rows.push(`${sum([...goalkeeping.values()])} = 1`)
  request.blocks.forEach((_, block) => {
    for (const position of request.positions) {
      if (position === request.goalkeeperPosition) continue
      rows.push(`${sum(request.children.flatMap((_, child) => place(request, child, position, block)))} = 1`)
    }
    request.children.forEach((_, child) => {
      const names = onField(request, goalkeeping, child, block)
      if (names.length > 0) rows.push(`${sum(names)} <= 1`)
      for (const name of names) binaries.add(name)
    })
  })
  const squares: string[] = []
  const sideSquares: string[] = []
  let constant = 0
  let sideConstant = 0
  request.children.forEach((child, index) => {
    const all = request.blocks.map((_, block) => block)
    constant += child.past.blocks ** 2
    squares.push(...squareSteps(request, goalkeeping, index, all, child.past.blocks, `u${index}`, rows, steps))
    for (const side of ['left', 'right'] as const) {
      const ofSide = all.filter((block) => request.blocks[block]!.side === side)
      sideConstant += child.past[side] ** 2
      const stem = `v${index}${side}`
      sideSquares.push(...squareSteps(request, goalkeeping, index, ofSide, child.past[side], stem, rows, steps))
    }
  })
  if (fixed !== null) rows.push(`${squares.join(' + ')} <= ${fixed.sumOfSquares - constant}`)
  const objective = fixed === null ? [...squares, `${constant} one`] : [...sideSquares, `${sideConstant} one`]
  return [
    'Minimize',
    ` obj: ${objective.join('\n + ')}`,
    'Subject To',
    ...rows.map((row, index) => ` r${index}: ${row}`),
    'Bounds',
    ' one = 1',
    ...[...steps].map((name) => ` 0 <= ${name} <= 1`),
    'Binaries',
    ` ${[...binaries].join('\n ')}`,
    'End',
  ].join('\n')
}

function goalkeeperVariables(request: LineupRequest): Map<number, string> {
  const entries = request.children.flatMap((child, index) => {
    const listed = child.positions.some((it) => it.position === request.goalkeeperPosition)
    return listed && child.goalkeeper !== 'no' ? [[index, `g${index}`] as const] : []
  })
  return new Map(entries)
}

function place(request: LineupRequest, child: number, position: string, block: number): string[] {
  const listed = request.children[child]!.positions.some((it) => it.position === position)
  return listed ? [`z${child}x${request.positions.indexOf(position)}x${block}`] : []
}

function onField(
  request: LineupRequest,
  goalkeeping: ReadonlyMap<number, string>,
  child: number,
  block: number,
): string[] {
  const field = request.positions.filter((it) => it !== request.goalkeeperPosition)
  const inGoal = goalkeeping.get(child)
  return [...field.flatMap((it) => place(request, child, it, block)), ...(inGoal === undefined ? [] : [inGoal])]
}

/** Ties unit steps to a child's blocks; step k costs (past + k)² − (past + k − 1)², so cheaper steps fill first by themselves. */
function squareSteps(
  request: LineupRequest,
  goalkeeping: ReadonlyMap<number, string>,
  child: number,
  blocks: readonly number[],
  past: number,
  stem: string,
  rows: string[],
  steps: Set<string>,
): string[] {
  const names = blocks.map((_, index) => `${stem}s${index + 1}`)
  for (const name of names) steps.add(name)
  const times = new Map<string, number>()
  for (const block of blocks) {
    for (const name of onField(request, goalkeeping, child, block)) times.set(name, (times.get(name) ?? 0) + 1)
  }
  if (times.size === 0 || names.length === 0) return []
  rows.push(`${names.join(' + ')} ${[...times].map(([name, count]) => `- ${count} ${name}`).join(' ')} = 0`)
  return names.map((name, index) => `${2 * (past + index) + 1} ${name}`)
}

function sum(names: readonly string[]): string {
  return names.join(' + ')
}
