// Pasted gear lists, entered by this folder so that they are loaded only when asked for.

export { addListed, itemOf, type Taken } from './adopt'
export { LIST_CAPS } from './limits'
export { readList } from './read'
export type * from './types'
