// Where heavy things should ride: the moment of the load about the hips, and what moving them close to the back changes.

export { ASSUMED, type Placing, placingOf } from './layout'
export {
  COMFORT,
  lessText,
  movedName,
  newtonMetres,
  type PlacingWords,
  placingWords,
  STUDIES,
  wholeCm,
} from './words'
