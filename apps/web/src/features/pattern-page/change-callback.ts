import type { PatternChange } from './edit-pattern'

/** Makes one change; what is typed into one place is taken back as one. */
export type OnChange = (change: PatternChange, typingIn?: string) => void
