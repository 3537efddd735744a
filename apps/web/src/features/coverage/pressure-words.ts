import type { Pressure } from '@espalier/domain/curriculum'
import { coverageMessage } from '../../messages/coverage'

/** A rung of the ladder as a reader of records says it. */
export function pressureWords(pressure: Pressure): string {
  switch (pressure) {
    case 'none':
      return coverageMessage('pressureNone')
    case 'poles':
      return coverageMessage('pressurePoles')
    case 'shadow':
      return coverageMessage('pressureShadow')
    case 'x1':
      return coverageMessage('pressureOne')
    default:
      return coverageMessage('pressureMany', { count: pressure.slice(1) })
  }
}
