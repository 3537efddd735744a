import type { EquipmentList } from '@espalier/contract/places'
import type { EQUIPMENT_KINDS, Equipment } from '@espalier/domain/session'
import { CLUB_STORE, type EquipmentRow } from './queries'

export const NO_EQUIPMENT: Equipment = { cone: 0, pole: 0, 'small-goal': 0, ball: 0, bib: 0 }

export function countsOf(rows: readonly EquipmentRow[]): Equipment {
  const counts: Record<(typeof EQUIPMENT_KINDS)[number], number> = { ...NO_EQUIPMENT }
  for (const row of rows) counts[row.kind] = row.count
  return counts
}

/** All kinds of an owner are counted together; who was never counted stands at zero. */
export function versionOf(rows: readonly EquipmentRow[]): number {
  return rows[0]?.version ?? 0
}

export function equipmentBodyOf(rows: readonly EquipmentRow[]): EquipmentList {
  const owners = [...new Set(rows.map((row) => row.owner_key))]
  return {
    owners: owners.map((owner) => {
      const own = rows.filter((row) => row.owner_key === owner)
      return { teamId: owner === CLUB_STORE ? null : owner, counts: countsOf(own), version: versionOf(own) }
    }),
  }
}
