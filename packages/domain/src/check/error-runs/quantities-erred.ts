/** The quantities of a step that err; each has random numbers of its own. Runs follow, in the order of the document. */
export const DIRECTION = 0
export const SPEED = 1
export const TOUCH_ALONG = 2
export const TOUCH_ACROSS = 3
export const RECEIVER = 4
export const FIRST_RUN = 5
