import { formats } from '@espalier/domain/formats'
import type { Choice } from '../../ui/select-field/select-field'

/** The formats a team or space can have, as the governing bodies name them. */
export const formatChoices: readonly Choice[] = Object.values(formats).map((format) => ({
  value: format.formatId,
  label: format.name,
}))

export function formatName(formatId: keyof typeof formats): string {
  return formats[formatId].name
}
