/** How often the pattern got out, as a coach can say it at the end of an evening without having counted. */
export const GOT_OUT = ['none', 'some', 'half', 'most'] as const
export type GotOut = (typeof GOT_OUT)[number]

/**
 * What a coach says of an evening in the first two of three taps: how far it went (the furthest stage practised, or no stage at
 * all: games only), and how often that stage got out. Which adult was there too is the third tap and no judgement.
 */
export type ReportJudgement =
  | { readonly howFar: 'stage'; readonly stageId: string; readonly gotOut: GotOut }
  | { readonly howFar: 'none' }
