import type { KeyObject } from 'node:crypto'
import { type Instant, instant, localDate, minutes } from '@espalier/domain/quantities'
import type { Equipment, Kit, KitDate, SquadMember } from '@espalier/domain/session'
import { timeInZone } from '../../clock/local-dates'
import { NO_EQUIPMENT } from '../equipment/bodies'
import { CLUB_STORE } from '../equipment/queries'
import { openName } from '../squads/sealed-names'
import type { KitRow } from './queries'

type KitWithoutContent = Omit<Kit, 'adopted'>

/** The row as a kit, but for the version: its frozen text is set in as it stands. */
export function kitBodyOf(
  row: KitRow,
  ids: { readonly clubId: string; readonly teamId: string },
  nameKey: KeyObject,
): KitWithoutContent {
  return {
    v: 1,
    club: { clubId: ids.clubId, name: row.club_name, zone: row.zone, demo: row.demo },
    team: { teamId: ids.teamId, ...row.team },
    adults: row.adults,
    dates: row.dates.map((date) => dateOf(date, row.zone)),
    spaces: row.spaces,
    equipment: equipmentOf(row.equipment),
    squad: row.squad.map((child) => squadMemberOf(child, ids.clubId, nameKey)),
    progress: row.progress.map(({ stageId, sessions, lastDate, ...counts }) => ({
      stageId,
      sessions,
      lastDate: localDate(lastDate),
      attemptsLeft: counts.attemptsLeft,
      attemptsRight: counts.attemptsRight,
      gotOutLeft: counts.gotOutLeft,
      gotOutRight: counts.gotOutRight,
    })),
  }
}

function dateOf(date: KitRow['dates'][number], zone: string): KitDate {
  const startsAt: Instant = instant(date.startsAt)
  return {
    dateId: date.dateId,
    startsAt,
    minutes: minutes(Math.round((date.endsAt - date.startsAt) / 60_000)),
    localDate: localDate(date.localDate),
    localStart: timeInZone(startsAt, zone),
    spaceId: date.spaceId,
    state: date.state,
    reported: date.reported,
  }
}

/** The team's own bag where it has one, else the club's store. */
function equipmentOf(rows: KitRow['equipment']): Equipment {
  const bag = rows.filter(({ owner }) => owner !== CLUB_STORE)
  const used = bag.length > 0 ? bag : rows
  return { ...NO_EQUIPMENT, ...Object.fromEntries(used.map(({ kind, count }) => [kind, count])) }
}

/** Who shows once a child's name is erased: the kit still needs a word for the place in the line-up. */
const ERASED = '–'

function squadMemberOf(child: KitRow['squad'][number], clubId: string, nameKey: KeyObject): SquadMember {
  const { playerId, shirt, home, stretch, goalkeeper, foot, left, right } = child
  const shortName =
    child.sealed === null || child.wrapped === null
      ? ERASED
      : openName(
          nameKey,
          { clubId, playerId },
          { sealed: Buffer.from(child.sealed, 'base64'), wrappedKey: Buffer.from(child.wrapped, 'base64') },
        )
  const past = { blocks: left + right, left, right }
  return { playerId, shortName, shirt, home, stretch, goalkeeper, foot, past }
}
