import { OBSTACLE_KINDS, type PatternDocument, TARGET_KINDS } from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { Origin } from '../../ui/origin/origin'
import { BlankChoice } from '../writing/blank'
import { MetresBlank } from '../writing/metres-blank'
import type { OnChange } from './change-callback'
import { originWord } from './margin-notes'
import { TARGET_WORDS } from './possible-choices'
import { SpotField } from './spot-field'

type PlacesFormProps = { readonly document: PatternDocument; readonly onChange: OnChange }

/** Where everyone starts, each on a landmark. */
export function PlacesForm({ document, onChange }: PlacesFormProps) {
  const { formation } = document
  return (
    <div className="flex flex-col gap-2">
      <p className="max-w-text text-small text-ink-soft">{patternsMessage('placesLead')}</p>
      <ul className="grid gap-x-8 desk:grid-cols-2">
        {document.positions.map(({ position, spot }) => (
          <li key={position} className="flex gap-3 border-b border-wire py-1">
            <span className="flex min-h-target w-12 shrink-0 items-center self-start font-semibold">{position}</span>
            <SpotField
              document={document}
              spot={spot}
              what={patternsMessage('placeOfStart', { position })}
              ownKey={`start ${position}`}
              onChange={(next) => onChange({ kind: 'place', position, spot: next })}
            />
          </li>
        ))}
      </ul>
      <div className="flex flex-wrap items-baseline gap-x-4">
        <Button kind="quiet" onClick={() => onChange({ kind: 'formation', formation })}>
          {patternsMessage('placesReset')}
        </Button>
        <span className="text-small text-ink-soft">{patternsMessage('placesHabit', { formation })}</span>
        <Origin word={originWord('habit')}>{patternsMessage('habitPlaces')}</Origin>
      </div>
    </div>
  )
}

/** Cones, poles and opponents in the way, and what can be shot at. */
export function SurroundingsForm({ document, onChange }: PlacesFormProps) {
  return (
    <div className="grid gap-x-8 gap-y-4 desk:grid-cols-2">
      <div className="flex min-w-0 flex-col gap-1">
        {document.obstacles.length === 0 && (
          <p className="text-small text-ink-soft">{patternsMessage('noObstacles')}</p>
        )}
        <ObstacleLines document={document} onChange={onChange} />
        <div className="flex flex-wrap gap-x-4">
          {OBSTACLE_KINDS.map((obstacle) => (
            <Button key={obstacle} kind="quiet" onClick={() => onChange({ kind: 'add-obstacle', obstacle })}>
              {patternsMessage(ADD_OBSTACLE[obstacle])}
            </Button>
          ))}
        </div>
      </div>
      <div className="flex min-w-0 flex-col gap-1">
        {document.targets.length === 0 && <p className="text-small text-ink-soft">{patternsMessage('noTargets')}</p>}
        <TargetLines document={document} onChange={onChange} />
        <div className="flex flex-wrap gap-x-4">
          {TARGET_KINDS.map((target) => (
            <Button key={target} kind="quiet" onClick={() => onChange({ kind: 'add-target', target })}>
              {patternsMessage(ADD_TARGET[target])}
            </Button>
          ))}
        </div>
      </div>
    </div>
  )
}

const ADD_OBSTACLE = { cone: 'addCone', pole: 'addPole', opponent: 'addOpponent' } as const
const ADD_TARGET = { goal: 'addGoal', 'small-goal': 'addSmallGoal', gate: 'addGate' } as const

function ObstacleLines({ document, onChange }: PlacesFormProps) {
  return document.obstacles.map((obstacle) => {
    const { obstacleId, kind, spot } = obstacle
    const what = patternsMessage('placeOfThing', { kind: patternsMessage(kind), id: obstacleId })
    return (
      <div key={obstacleId} className="flex flex-wrap items-baseline gap-x-2 border-b border-wire py-1">
        <BlankChoice
          label={patternsMessage('obstacleKind')}
          value={kind}
          choices={OBSTACLE_KINDS.map((value) => ({ value, label: patternsMessage(value), off: null }))}
          onChoose={(next) => onChange({ kind: 'set-obstacle', obstacle: { ...obstacle, kind: next } })}
          strong
        />
        <span>{obstacleId}</span>
        <SpotField
          document={document}
          spot={spot}
          what={what}
          ownKey={`obstacle ${obstacleId}`}
          onChange={(next) => onChange({ kind: 'set-obstacle', obstacle: { ...obstacle, spot: next } })}
        />
        <Button
          kind="quiet"
          aria-label={patternsMessage('deleteNamed', { what })}
          onClick={() => onChange({ kind: 'remove-obstacle', obstacleId })}
        >
          {patternsMessage('removeShort')}
        </Button>
      </div>
    )
  })
}

function TargetLines({ document, onChange }: PlacesFormProps) {
  return document.targets.map((target) => {
    const { targetId, kind, spot, widthMm } = target
    const what = patternsMessage('placeOfThing', { kind: patternsMessage(TARGET_WORDS[kind]), id: targetId })
    return (
      <div key={targetId} className="flex flex-wrap items-baseline gap-x-2 border-b border-wire py-1">
        <span className="font-semibold">
          {patternsMessage('targetNamed', { kind: patternsMessage(TARGET_WORDS[kind]), id: targetId })}
        </span>
        <MetresBlank
          label={patternsMessage('widthOf', { what })}
          value={widthMm}
          onWrite={(next) => onChange({ kind: 'set-target', target: { ...target, widthMm: next } })}
          least={100}
          most={150_000}
        />
        <span>{patternsMessage('width')}</span>
        <SpotField
          document={document}
          spot={spot}
          what={what}
          ownKey={`target ${targetId}`}
          onChange={(next) => onChange({ kind: 'set-target', target: { ...target, spot: next } })}
        />
        <Button
          kind="quiet"
          aria-label={patternsMessage('deleteNamed', { what })}
          onClick={() => onChange({ kind: 'remove-target', targetId })}
        >
          {patternsMessage('removeShort')}
        </Button>
      </div>
    )
  })
}
