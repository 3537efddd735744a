export * from './kit'
export * from './plan'
