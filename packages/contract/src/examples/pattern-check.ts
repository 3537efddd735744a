import { pattern } from './pattern'

/** Everything that can be asked of a document, on the pitch it is drawn on. */
export const patternCheck = {
  document: pattern.document,
  space: null,
  profileId: 'U10',
  surface: 'normal',
  options: {
    looks: true,
    pressure: { opponentsMax: 2, released: 'first-touch' },
    errorRuns: { runs: 1_000, seed: 7 },
  },
} as const
