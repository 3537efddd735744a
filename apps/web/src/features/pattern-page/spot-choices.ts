import { type PatternDocument, placeOf } from '@espalier/domain/pattern'
import { type Landmark, nominalSpace, type Spot, spotPoint } from '@espalier/domain/pitch'
import { patternsMessage } from '../../messages/patterns'
import type { PartChoice } from '../writing/blank'
import { metresText } from '../writing/metres-blank'
import { landmarkChoices, TARGET_WORDS } from './possible-choices'

/** A place the pattern already has, to measure another one from. */
export type NamedSpot = { readonly key: string; readonly label: string; readonly spot: Spot }

/** Every place of a pattern that another can be measured from. */
export function namedSpots(document: PatternDocument): readonly NamedSpot[] {
  const starts = document.positions.map(({ position, spot }) => ({
    key: `start ${position}`,
    label: patternsMessage('spotStartOf', { position }),
    spot,
  }))
  const obstacles = document.obstacles.map(({ obstacleId, kind, spot }) => ({
    key: `obstacle ${obstacleId}`,
    label: patternsMessage('spotObstacle', { kind: patternsMessage(kind), id: obstacleId }),
    spot,
  }))
  const targets = document.targets.map(({ targetId, kind, spot }) => ({
    key: `target ${targetId}`,
    label: patternsMessage('spotTarget', { kind: patternsMessage(TARGET_WORDS[kind]), id: targetId }),
    spot,
  }))
  const moves = document.steps.flatMap((step, index) => {
    const number = index + 1
    const ball = placeOf(step.action)
    const runs = step.runs.map((run) => ({
      key: `run ${step.stepId} ${run.position}`,
      label: patternsMessage('spotRunTo', { position: run.position, number }),
      spot: run.to,
    }))
    const label = patternsMessage('spotBallAt', { number })
    return ball === null ? runs : [{ key: `ball ${step.stepId}`, label, spot: ball }, ...runs]
  })
  return [...starts, ...obstacles, ...targets, ...moves]
}

const LANDMARK = 'landmark '
const PLACE = 'place '

export function landmarkValue(landmark: Landmark): string {
  return LANDMARK + landmark
}

export function namedValue(key: string): string {
  return PLACE + key
}

/** What a place can be measured from: landmarks by end, then the places of this pattern but its own. */
export function anchorChoices(document: PatternDocument, ownKey: string): readonly PartChoice[] {
  const landmarks = landmarkChoices(document).map((choice) => ({
    ...choice,
    value: landmarkValue(choice.value),
    group: patternsMessage(endOf(choice.value)),
  }))
  const others = namedSpots(document)
    .filter(({ key }) => key !== ownKey)
    .map(({ key, label }) => ({ value: namedValue(key), label, off: null, group: patternsMessage('spotOthers') }))
  const order = ['spotOwnEnd', 'spotMiddle', 'spotFarEnd'].map((name) => patternsMessage(name as 'spotOwnEnd'))
  const sorted = [...landmarks].sort((one, other) => order.indexOf(one.group) - order.indexOf(other.group))
  return [...sorted, ...others]
}

/** The landmark or the named place that a choice stands for. */
export function readAnchor(
  document: PatternDocument,
  value: string,
):
  | { readonly kind: 'landmark'; readonly landmark: Landmark }
  | { readonly kind: 'place'; readonly place: NamedSpot }
  | null {
  if (value.startsWith(PLACE)) {
    const place = namedSpots(document).find(({ key }) => namedValue(key) === value)
    return place === undefined ? null : { kind: 'place', place }
  }
  const choice = landmarkChoices(document).find((each) => landmarkValue(each.value) === value)
  return choice === undefined ? null : { kind: 'landmark', landmark: choice.value }
}

/** Where a spot comes to lie on the game's usual pitch, in words. */
export function spotLiesWords(document: PatternDocument, spot: Spot): string {
  const point = spotPoint(nominalSpace(document.formatId), spot)
  if (point === null) return patternsMessage('spotNowhere')
  const metres = metresText(Math.abs(Math.round(point.y * 10) * 100))
  const aside =
    metres === '0'
      ? patternsMessage('spotAsideMiddle')
      : patternsMessage(point.y > 0 ? 'spotAsideRight' : 'spotAsideLeft', { metres })
  return patternsMessage('spotLies', { up: metresText(Math.round(point.x * 10) * 100), aside })
}

function endOf(landmark: Landmark): 'spotOwnEnd' | 'spotMiddle' | 'spotFarEnd' {
  if (landmark.startsWith('far-')) return 'spotFarEnd'
  return landmark.startsWith('halfway') || landmark === 'centre-mark' ? 'spotMiddle' : 'spotOwnEnd'
}
