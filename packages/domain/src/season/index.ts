export * from './plan-stages'
