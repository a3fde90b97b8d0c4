// How sure an answer is, what it rests on and what would make it surer, in words.

export { type Basis, basisFor, basisOf, packingBasis, packingsText } from './basis'
export { numberWord } from './count'
export { enoughText, likelyLoadText, likelyRange, likelyText } from './likely'
export { type MeasureNext, measureNext, type PackingPart } from './measure-next'
export {
  effectText,
  isCounted,
  isMeasured,
  type OwnPackings,
  oddText,
  ownPackings,
  reckonsWith,
  reckonWith,
  withNewPacking,
} from './own-packing'
export { listOnShelf, type PackedWhen, packedLimits, packedSeen, reckonedList } from './packed'
export { shareWords } from './shares'
export { type SimulationRow, type SimulationWords, simulationInWords } from './simulation'
