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
export { givenToList } from './give-packs'
export { joined } from './join'
export { kitOnTrip } from './kit-on-trip'
export { type MergedShelf, mergeShelves, ownerIn, ownersOf } from './merge'
export { keepAsIs, type Offer, type OfferedField, offersFor, takeOffer } from './offers'
export type { Versions } from './order'
export {
  givesPacks,
  packTexts,
  parted,
  type WithDraft,
  withList,
  withListTexts,
} from './own-packs'
export { foodThings, withOwnRation } from './own-ration'
export { linkItems, packThings, shelveItems } from './pack'
export { byId, isBranch, isThings, own, type WithId } from './plain'
export { same } from './same'
export { thingsFound } from './search'
export { type Candidates, candidatesFor } from './swap-candidates'
export {
  type Alternative,
  addSwaps,
  alternativesOf,
  removeSwaps,
  swapItem,
  textsBesides,
} from './swaps'
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
  type OwnFigures,
  type Packing,
  type PackingList,
  type Said,
  SHELF_FORMAT,
  SHELF_LISTS,
  SHELF_VERSION,
  type Shelf,
  type ShelfContents,
  type Thing,
  type ThingFacts,
} from './types'
export { unusedOnShelf, withUnusedNoted } from './unused'
