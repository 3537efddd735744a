import { curriculum } from './curriculum'
import { evening } from './evening'
import { pattern } from './pattern'
import { setup } from './setup'

/** Named bodies as pages and phones send them, all invented: every write of the API by its name. */
export const examples = { ...setup, pattern, curriculum, ...evening } as const
export type ExampleName = keyof typeof examples
