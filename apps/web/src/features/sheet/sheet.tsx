import type { EveningFacts, SessionPlan } from '@espalier/domain/session'
import { sheetMessage } from '../../messages/sheet'
import { dayWords } from '../../shell/dates'
import { classNames } from '../../ui/class-names'
import { Mark } from '../../ui/page-frame/mark'
import { childNames } from '../tonight/child-names'
import { clockAfter, patternActivity } from '../tonight/evening-parts'
import { stagePattern } from '../tonight/stage-pattern'
import type { Tonight } from '../tonight/use-tonight'
import { SheetAreas, sizeWords } from './sheet-areas'
import { SheetEvening } from './sheet-evening'
import { SheetGroups } from './sheet-groups'
import { SheetLineUps } from './sheet-line-ups'
import { SheetPattern } from './sheet-pattern'
import { SheetSetOut } from './sheet-set-out'

export type SheetParts = {
  readonly tonight: Tonight
  readonly plan: SessionPlan
  readonly facts: EveningFacts
}

/** One page, one ink: the evening, where, the pattern, the walk, who plays where, and a line for what changed. */
export function Sheet(parts: SheetParts) {
  const { tonight, plan } = parts
  const { kit } = tonight
  const activity = patternActivity(plan)
  return (
    <article className={classNames('sheet', LENGTHS[lengthOf(plan)])}>
      <SheetHead {...parts} />
      <div className="sheet-columns">
        <SheetEvening {...parts} />
        <div className="sheet-drawings">
          <SheetAreas {...parts} />
          {activity !== null && <SheetPattern {...parts} activity={activity} />}
          <SheetGroups plan={plan} nameOf={childNames(kit)} />
        </div>
      </div>
      <SheetSetOut {...parts} />
      {activity?.lineups != null && (
        <SheetLineUps
          activity={activity}
          lineups={activity.lineups}
          formation={stagePattern(kit, activity.stageId)?.document.positions.map((placed) => placed.position) ?? []}
          nameOf={childNames(kit)}
        />
      )}
      <p className="sheet-foot">
        <span>{sheetMessage('changed')}</span>
        <span className="sheet-blank" />
        <span>{sheetMessage('coach')}</span>
        <span className="sheet-blank sheet-blank-short" />
      </p>
    </article>
  )
}

const LENGTHS = { usual: '', long: 'sheet-long', longest: 'sheet-longest' } as const

/** What the sheet must hold decides how small its words are set, so that one page stays one. Found by trying. */
function lengthOf(plan: SessionPlan): keyof typeof LENGTHS {
  const lineUps = patternActivity(plan)?.lineups?.blocks.length ?? 0
  const lines = plan.setOut.length + 2 * lineUps
  return lines <= 34 ? 'usual' : lines <= 52 ? 'long' : 'longest'
}

function SheetHead({ tonight, plan, facts }: SheetParts) {
  const { kit, chosen } = tonight
  const { date } = chosen
  const { space, turnout } = facts
  const guests = turnout.guests.length
  const place = `${space.venue}, ${space.name} (${sizeWords(space)})`
  const count = plan.children.length
  const came = guests > 0 ? sheetMessage('childrenAndGuests', { count, guests }) : sheetMessage('children', { count })
  const version = kit.adopted === null ? '' : ` ${kit.adopted.content.name}, ${kit.adopted.number}.`
  return (
    <header className="sheet-head">
      <div>
        <h1>
          <strong>{kit.team.name}</strong>{' '}
          <span className="voice-club">
            {sheetMessage('heading', {
              day: dayWords(date.localDate),
              start: date.localStart,
              end: clockAfter(date.localStart, date.minutes),
            })}
          </span>
        </h1>
        <p>
          {kit.club.name}. {place}. {came}.{version}
        </p>
      </div>
      <Mark className="size-6 shrink-0" />
    </header>
  )
}
