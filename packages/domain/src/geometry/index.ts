export * from './point'
export * from './polyline'
export * from './rectangle'
export * from './segment'
