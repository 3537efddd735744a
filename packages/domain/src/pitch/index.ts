export * from './space'
export * from './spot'
