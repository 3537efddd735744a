import type { FormatId } from '@espalier/domain/formats'
import { formatOf } from '@espalier/domain/formats'
import { type Finding, MARKINGS, type Marking, nominalSpace, type Space } from '@espalier/domain/pitch'
import { type Millimetres, millimetres } from '@espalier/domain/quantities'
import { numberFromText } from '../../ui/number-field/number-text'

/** What the form shows: lengths as typed, so that nothing a person wrote is lost while it is wrong. */
export type SpaceForm = {
  readonly name: string
  readonly venue: string
  readonly covers: Space['covers']
  readonly formatId: FormatId
  readonly length: string
  readonly width: string
  readonly markings: Readonly<Record<Marking, Finding>>
  readonly ownGoal: string
  readonly farGoal: string
  readonly movable: boolean
}

export type SpaceField = 'length' | 'width' | 'ownGoal' | 'farGoal'

const LEAST_SIDE_METRES = 5
const LONGEST_SIDE_METRES = 150
const LEAST_GOAL_METRES = 1
const WIDEST_GOAL_METRES = 8

/** Where a form begins: a whole pitch of the format at its nominal size. */
export function newSpaceForm(formatId: FormatId): SpaceForm {
  return formOfSpace({ ...nominalSpace(formatId), name: '' })
}

export function formOfSpace(space: Space): SpaceForm {
  const goalAt = (end: 'own' | 'far') => space.goals.find((goal) => goal.end === end)
  return {
    name: space.name,
    venue: space.venue,
    covers: space.covers,
    formatId: space.formatId,
    length: metresText(space.lengthMm),
    width: metresText(space.widthMm),
    markings: space.markings,
    ownGoal: metresTextOrNone(goalAt('own')?.widthMm),
    farGoal: metresTextOrNone(goalAt('far')?.widthMm),
    movable: space.goals.some((goal) => goal.movable),
  }
}

/** A change of kind or format starts from what is usual there: half as long, other lines, no goal on plain grass. */
export function withKind(form: SpaceForm, covers: Space['covers'], formatId: FormatId): SpaceForm {
  const usual = nominalSpace(formatId)
  const lengthMm = covers === 'half' ? millimetres(Math.round(usual.lengthMm / 2)) : usual.lengthMm
  const noLines = Object.fromEntries(MARKINGS.map((marking) => [marking, 'none'])) as Record<Marking, Finding>
  const goal = metresText(formatOf(formatId).goal.value.widthMm)
  return {
    ...form,
    covers,
    formatId,
    length: metresText(lengthMm),
    width: metresText(usual.widthMm),
    markings: covers === 'plain' ? noLines : usual.markings,
    ownGoal: covers === 'plain' ? '' : goal,
    farGoal: covers === 'whole' ? goal : '',
  }
}

export type SpaceReading =
  | { readonly ok: true; readonly space: Space }
  | { readonly ok: false; readonly wrong: readonly SpaceField[] }

/** The space a form describes, in whole millimetres, or the fields whose lengths cannot be read. */
export function spaceOfForm(form: SpaceForm): SpaceReading {
  const length = millimetresFrom(form.length, LEAST_SIDE_METRES, LONGEST_SIDE_METRES)
  const width = millimetresFrom(form.width, LEAST_SIDE_METRES, LONGEST_SIDE_METRES)
  const own = goalFrom(form.ownGoal)
  const far = goalFrom(form.farGoal)
  if (length === null || width === null || own === 'wrong' || far === 'wrong') {
    const wrong: SpaceField[] = []
    if (length === null) wrong.push('length')
    if (width === null) wrong.push('width')
    if (own === 'wrong') wrong.push('ownGoal')
    if (far === 'wrong') wrong.push('farGoal')
    return { ok: false, wrong }
  }
  const goals = [
    ...(own === null ? [] : [{ end: 'own', widthMm: own, movable: form.movable } as const]),
    ...(far === null ? [] : [{ end: 'far', widthMm: far, movable: form.movable } as const]),
  ]
  const { covers, formatId, markings } = form
  const names = { name: form.name.trim(), venue: form.venue.trim() }
  return { ok: true, space: { ...names, lengthMm: length, widthMm: width, covers, formatId, markings, goals } }
}

function millimetresFrom(text: string, leastMetres: number, mostMetres: number): Millimetres | null {
  const value = numberFromText(text)
  if (value === null || value < leastMetres || value > mostMetres) return null
  return millimetres(Math.round(value * 1000))
}

function goalFrom(text: string): Millimetres | null | 'wrong' {
  if (text.trim() === '') return null
  return millimetresFrom(text, LEAST_GOAL_METRES, WIDEST_GOAL_METRES) ?? 'wrong'
}

function metresText(length: Millimetres): string {
  return String(length / 1000)
}

function metresTextOrNone(length: Millimetres | undefined): string {
  return length === undefined ? '' : metresText(length)
}
