import {
  actorOf,
  type BallAction,
  type Foot,
  type PatternDocument,
  receiverOf,
  type Touches,
} from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'
import { BlankChoice, type PartChoice } from '../writing/blank'
import type { OnChange } from './change-callback'
import { actorChoices, kindChoices, obstacleChoices, receiverChoices, targetChoices } from './possible-choices'
import { SpotField } from './spot-field'
import { type FoundStep, furtherUp, playedBy, standsAt } from './step-path'

type ActionFormProps = {
  readonly document: PatternDocument
  readonly found: FoundStep
  readonly onChange: OnChange
}

/** The ball action of one step as a sentence with blanks; only blanks that this action has. */
export function ActionForm({ document, found, onChange }: ActionFormProps) {
  const { stepId, action } = found.step
  const set = (next: BallAction) => onChange({ kind: 'action', stepId, action: next })
  return (
    <p className="flex flex-wrap items-baseline gap-x-2">
      <BlankChoice
        label={patternsMessage('whoPlays')}
        value={actorOf(action)}
        choices={actorChoices(document, found)}
        onChoose={(position) => set(playedBy(action, position))}
        strong
      />
      <BlankChoice
        label={patternsMessage('whatPlays')}
        value={action.kind}
        choices={kindChoices(document, found)}
        onChoose={(to) => onChange({ kind: 'action-kind', stepId, to })}
      />
      <ReceiverBlank document={document} found={found} onAction={set} />
      <AimBlanks document={document} action={action} onAction={set} />
      <IntoBlanks document={document} found={found} onAction={set} />
      <HowBlanks action={action} onAction={set} />
    </p>
  )
}

type BlanksProps = {
  readonly document: PatternDocument
  readonly found: FoundStep
  readonly onAction: (action: BallAction) => void
}

function ReceiverBlank({ document, found, onAction }: BlanksProps) {
  const { action } = found.step
  if (action.kind === 'carry' || action.kind === 'dribble-past' || action.kind === 'shot') return null
  return (
    <BlankChoice
      label={patternsMessage('whoReceives')}
      value={receiverOf(action) ?? ''}
      choices={receiverChoices(document, found)}
      onChoose={(to) => onAction({ ...action, to })}
      strong
    />
  )
}

type AimBlanksProps = {
  readonly document: PatternDocument
  readonly action: BallAction
  readonly onAction: (action: BallAction) => void
}

/** At whom a carry goes, past what a dribble, at what a shot. */
function AimBlanks({ document, action, onAction }: AimBlanksProps) {
  if (action.kind === 'shot')
    return (
      <BlankChoice
        label={patternsMessage('shootAt')}
        value={action.target}
        choices={targetChoices(document)}
        onChoose={(target) => onAction({ ...action, target })}
      />
    )
  if (action.kind === 'dribble-past')
    return (
      <BlankChoice
        label={patternsMessage('dribblePast')}
        value={action.past}
        choices={obstacleChoices(document)}
        onChoose={(past) => onAction({ ...action, past })}
      />
    )
  if (action.kind !== 'carry' || document.obstacles.length === 0) return null
  const nobody: PartChoice = { value: '', label: patternsMessage('atNobody'), off: null }
  const at = obstacleChoices(document).map((choice) => ({
    ...choice,
    label: patternsMessage('atObstacle', { obstacle: choice.label }),
  }))
  return (
    <BlankChoice
      label={patternsMessage('carryAt')}
      value={action.at ?? ''}
      choices={[nobody, ...at]}
      onChoose={(chosen) => onAction({ ...action, at: chosen === '' ? null : chosen })}
    />
  )
}

/** To feet or into space, and where that is. */
function IntoBlanks({ document, found, onAction }: BlanksProps) {
  const { before, step } = found
  const { action } = step
  const what = patternsMessage('placeOfBall', { number: before.length + 1 })
  if (action.kind === 'carry' || action.kind === 'dribble-past')
    return (
      <span className="flex basis-full flex-wrap items-baseline gap-x-1">
        <span>{patternsMessage('carriesTo')}</span>
        <SpotField
          document={document}
          spot={action.to}
          what={what}
          ownKey={`ball ${step.stepId}`}
          onChange={(to) => onAction({ ...action, to })}
        />
      </span>
    )
  if (!('into' in action)) return null
  const space = () => {
    const run = step.runs.find((each) => each.position === action.to)
    return { kind: 'space', spot: run?.to ?? furtherUp(standsAt(document, before, action.to), 3) } as const
  }
  const { into } = action
  return (
    <>
      <BlankChoice
        label={patternsMessage('into')}
        value={into.kind}
        choices={INTO_CHOICES}
        onChoose={(kind) => onAction({ ...action, into: kind === 'feet' ? { kind: 'feet' } : space() })}
      />
      {into.kind === 'space' && (
        <span className="flex basis-full flex-wrap items-baseline gap-x-1">
          <span>{patternsMessage('metAt')}</span>
          <SpotField
            document={document}
            spot={into.spot}
            what={what}
            ownKey={`ball ${step.stepId}`}
            onChange={(spot) => onAction({ ...action, into: { kind: 'space', spot } })}
          />
        </span>
      )}
    </>
  )
}

/** How it is played: height, touches, foot. */
function HowBlanks({ action, onAction }: Pick<AimBlanksProps, 'action' | 'onAction'>) {
  return (
    <>
      {action.kind === 'pass' && (
        <>
          <BlankChoice
            label={patternsMessage('height')}
            value={action.height}
            choices={HEIGHT_CHOICES}
            onChoose={(height) => onAction({ ...action, height })}
          />
          <BlankChoice
            label={patternsMessage('touches')}
            value={action.touches === 1 ? 'one' : 'two'}
            choices={TOUCH_CHOICES}
            onChoose={(touches) => onAction({ ...action, touches: (touches === 'one' ? 1 : 2) satisfies Touches })}
          />
        </>
      )}
      {(action.kind === 'pass' || action.kind === 'set-back') && (
        <BlankChoice
          label={patternsMessage('foot')}
          value={action.foot}
          choices={FOOT_CHOICES}
          onChoose={(foot) => onAction({ ...action, foot })}
        />
      )}
    </>
  )
}

const INTO_CHOICES: readonly PartChoice<'feet' | 'space'>[] = [
  { value: 'feet', label: patternsMessage('intoFeet'), off: null },
  { value: 'space', label: patternsMessage('intoSpace'), off: null },
]
const HEIGHT_CHOICES: readonly PartChoice<'ground' | 'air'>[] = [
  { value: 'ground', label: patternsMessage('onGround'), off: null },
  { value: 'air', label: patternsMessage('inAir'), off: null },
]
const TOUCH_CHOICES: readonly PartChoice<'one' | 'two'>[] = [
  { value: 'one', label: patternsMessage('oneTouch'), off: null },
  { value: 'two', label: patternsMessage('twoTouches'), off: null },
]
const FOOT_CHOICES: readonly PartChoice<Foot>[] = [
  { value: 'either', label: patternsMessage('footEither'), off: null },
  { value: 'near', label: patternsMessage('footNear'), off: null },
  { value: 'far', label: patternsMessage('footFar'), off: null },
]
