import type { ReactElement } from 'react'

/** Named examples of one component: they feed its tests, the gallery and the accessibility run. */
export type Examples = Readonly<Record<string, ReactElement>>
