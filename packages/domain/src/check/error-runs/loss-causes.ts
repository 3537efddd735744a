/**
 * Why a ball is lost. Missed: it passes the receiver, beyond a step and a leg, or a chase too long; a shot passes its target.
 * Out: it leaves the space. Intercepted: an opponent drawn is there first. Short: it stops before it is near its place.
 * Touch: it jumps off the receiver's foot to an opponent or over the line.
 */
export const LOSS_CAUSES = ['missed', 'out', 'intercepted', 'short', 'touch'] as const
export type LossCause = (typeof LOSS_CAUSES)[number]

/** The causes as the kernel counts them, and that there is none. */
export const KEPT = -1
export const MISSED = LOSS_CAUSES.indexOf('missed')
export const OUT = LOSS_CAUSES.indexOf('out')
export const INTERCEPTED = LOSS_CAUSES.indexOf('intercepted')
export const SHORT = LOSS_CAUSES.indexOf('short')
export const TOUCH = LOSS_CAUSES.indexOf('touch')
