export * from './decide-access'
export * from './permissions'
export * from './roles'
