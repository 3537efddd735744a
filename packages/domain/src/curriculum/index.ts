export * from './draft'
