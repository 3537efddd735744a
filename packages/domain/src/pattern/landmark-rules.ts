import { landmarkPoint, nominalSpace, type Spot } from '../pitch'
import { listSteps, placeOf } from './actions'
import type { PatternDocument, PlacedPosition, Step } from './document'
import type { DocumentFault } from './faults'

/** A spot hangs on a landmark of the format's pitch: there is no build-out line in a format that plays without one. */
export function landmarkFaults(document: PatternDocument): readonly DocumentFault[] {
  const pitch = nominalSpace(document.formatId)
  return listSpots(document).flatMap(({ spot, pointer }): DocumentFault[] =>
    landmarkPoint(pitch, spot.landmark) === null
      ? [
          {
            code: 'landmark-unknown',
            pointer: `${pointer}/landmark`,
            detail: `this format has no ${spot.landmark}`,
          },
        ]
      : [],
  )
}

export type NamedSpot = { readonly spot: Spot; readonly pointer: string }

/** Every spot of a document with the JSON pointer (RFC 6901) to it. */
export function listSpots(document: PatternDocument): readonly NamedSpot[] {
  const placed = (list: readonly PlacedPosition[] | readonly { readonly spot: Spot }[], pointer: string): NamedSpot[] =>
    list.map((each, index) => ({ spot: each.spot, pointer: `${pointer}/${index}/spot` }))
  return [
    ...placed(document.positions, '/positions'),
    ...placed(document.inPossession, '/inPossession'),
    ...placed(document.onLoss, '/onLoss'),
    ...placed(document.obstacles, '/obstacles'),
    ...placed(document.targets, '/targets'),
    ...listSteps(document).flatMap(({ step, pointer }) => stepSpots(step, pointer)),
  ]
}

function stepSpots(step: Step, pointer: string): readonly NamedSpot[] {
  const spot = placeOf(step.action)
  const field = 'into' in step.action ? 'action/into/spot' : 'action/to'
  return [
    ...(spot === null ? [] : [{ spot, pointer: `${pointer}/${field}` }]),
    ...step.runs.map((run, index) => ({ spot: run.to, pointer: `${pointer}/runs/${index}/to` })),
  ]
}
