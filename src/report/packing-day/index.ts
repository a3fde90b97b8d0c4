// Packing day: the list in packing order, what may be forgotten, and the scale.

export { amountsToPack } from './amounts'
export { type PackedPlace, type PackedRow, packedByPlace } from './by-place'
export { type Forgotten, forgotten, withForgotten } from './forgotten'
export { inPackingOrder, type PackingPart } from './order'
export {
  agrees,
  type Cause,
  causesOf,
  differenceText,
  sharedText,
  startWater,
  unexplained,
  type Weighing,
  weighingLines,
  weighingOf,
} from './scale'
export { type Guess, guessesAboard, roomOf, type Shared, spreadOver } from './spread'
