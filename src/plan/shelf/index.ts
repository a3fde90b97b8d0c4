export {
  addBase,
  addPacking,
  duplicateBase,
  linesFrom,
  moveBase,
  removeBase,
  renameBase,
  setBaseLines,
  withdrawPacking,
} from './bases'
export { changeThing, linksByName, putOnShelf } from './change'
export { asInTrip, asOnShelf, differences } from './differences'
export { setThingFact, thingPath } from './fact'
export { type MergedShelf, mergeShelves } from './merge'
export { keepAsIs, type Offer, type OfferedField, offersFor, takeOffer } from './offers'
export { mergedOrder, type Versions } from './order'
export { linkItems, packThings, shelveItems } from './pack'
export { same } from './same'
export {
  addThing,
  duplicateThing,
  factsOf,
  moveThing,
  removeThings,
  setGroup,
  setRetired,
  setStow,
  setThing,
  setThings,
  stamps,
  type ThingChange,
} from './things'
export {
  type Base,
  type BaseLine,
  emptyShelf,
  type Outside,
  type Packing,
  type PackingList,
  type Said,
  type Shelf,
  type ShelfContents,
  type Thing,
  type ThingFacts,
} from './types'
