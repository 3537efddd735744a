export * from './document'
