import { actorOf, listSteps, receiverOf } from './actions'
import type { BallAction, PatternDocument, Step } from './document'
import type { DocumentFault } from './faults'

/** Whom and what each step names: known positions, known obstacles, someone or something that can receive. */
export function stepFaults(document: PatternDocument): readonly DocumentFault[] {
  const known: Known = {
    positions: new Set(document.positions.map((each) => each.position)),
    obstacles: new Set(document.obstacles.map((each) => each.obstacleId)),
    targets: new Set(document.targets.map((each) => each.targetId)),
  }
  return listSteps(document).flatMap(({ step, pointer }) => [
    ...actionFaults(step.action, `${pointer}/action`, known),
    ...runFaults(step, pointer, known),
  ])
}

type Known = {
  readonly positions: ReadonlySet<string>
  readonly obstacles: ReadonlySet<string>
  readonly targets: ReadonlySet<string>
}

function actionFaults(action: BallAction, pointer: string, known: Known): readonly DocumentFault[] {
  const actor = actorOf(action)
  const faults: DocumentFault[] = []
  if (!known.positions.has(actor)) {
    const field = 'from' in action ? 'from' : 'by'
    faults.push({ code: 'position-unknown', pointer: `${pointer}/${field}`, detail: `${actor} has no starting place` })
  }
  const obstacle = action.kind === 'carry' ? action.at : action.kind === 'dribble-past' ? action.past : null
  if (obstacle !== null && !known.obstacles.has(obstacle)) {
    const field = action.kind === 'carry' ? 'at' : 'past'
    faults.push({
      code: 'obstacle-unknown',
      pointer: `${pointer}/${field}`,
      detail: `there is no obstacle ${obstacle}`,
    })
  }
  return [...faults, ...receptionFaults(action, pointer, known)]
}

function receptionFaults(action: BallAction, pointer: string, known: Known): readonly DocumentFault[] {
  if (action.kind === 'carry' || action.kind === 'dribble-past') return []
  if (action.kind === 'shot') {
    if (known.targets.has(action.target)) return []
    return [
      {
        code: 'nobody-receives',
        pointer: `${pointer}/target`,
        detail: `there is no target ${action.target} to shoot at`,
      },
    ]
  }
  const receiver = receiverOf(action)
  if (receiver === actorOf(action)) {
    return [{ code: 'nobody-receives', pointer: `${pointer}/to`, detail: `${receiver} cannot pass to themselves` }]
  }
  if (receiver !== null && !known.positions.has(receiver)) {
    return [{ code: 'nobody-receives', pointer: `${pointer}/to`, detail: `${receiver} has no starting place` }]
  }
  return []
}

function runFaults(step: Step, pointer: string, known: Known): readonly DocumentFault[] {
  const runners = step.runs.map((run) => run.position)
  return runners.flatMap((runner, index): DocumentFault[] => {
    const at = `${pointer}/runs/${index}/position`
    if (!known.positions.has(runner)) {
      return [{ code: 'position-unknown', pointer: at, detail: `${runner} has no starting place` }]
    }
    return runners.indexOf(runner) === index
      ? []
      : [{ code: 'run-twice', pointer: at, detail: `${runner} makes two runs in one step` }]
  })
}
