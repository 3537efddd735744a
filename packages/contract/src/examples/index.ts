import { curriculum } from './curriculum'
import { evening } from './evening'
import { pattern } from './pattern'
import { patternCheck } from './pattern-check'
import { setup } from './setup'

/** Named bodies as pages and phones send them, all invented: every write of the API by its name, and what is asked by one. */
export const examples = { ...setup, pattern, patternCheck, curriculum, ...evening } as const
export type ExampleName = keyof typeof examples
