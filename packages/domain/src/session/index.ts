export * from './kit'
export * from './plan'
export * from './report'
