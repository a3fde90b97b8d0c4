// Pasted gear lists, entered by this folder so that they are loaded only when asked for.

export { addByGroup, addListed, itemOf, type Taken } from './add-to-plan'
export { LINE_END, LIST_CAPS } from './limits'
export { isFood, isOwnPack, isSumName, NOT_EATEN } from './names'
export { readList } from './read'
export { type Said, saidIn } from './said'
export type * from './types'
