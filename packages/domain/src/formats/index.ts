export * from './format'
export * from './formats'
