export {
  type LineupEvening,
  PLACES_CHANGED_MOST,
  type ResolvedLineups,
  resolveLineups,
  type TurnoutChange,
} from './resolve-lineups'
export { solveLineups } from './solve-lineups'
export type * from './types'
