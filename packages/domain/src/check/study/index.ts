export * from './other-balls'
export * from './pitch-control'
export * from './reach-regions'
export * from './time-to-intercept'
