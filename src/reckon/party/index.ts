export { personAlone } from './person-alone'
export { type ReckonedParty, reckonParty } from './reckon-party'
export type * from './types'
