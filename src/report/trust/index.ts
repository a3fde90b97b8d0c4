// How sure an answer is, what it rests on and what would make it surer, in words.

export { FACTOR_SPREAD } from '../../reckon'
export { numberWord } from './count'
export { enoughText, likelyRange, likelyText } from './likely'
export { type MeasureNext, measureNext, type PackingPart } from './measure-next'
export { effectText, type OwnPacking, oddText, ownPacking, reckonsWith, reckonWith } from './own-packing'
export { litresAtFactor1, type PackedWhen, packedLimits, packedSeen } from './packed'
export { type Rests, restsFor, restsOn } from './rests'
export { shareWords } from './shares'
export { type TrialRow, type TrialWords, trialInWords } from './trial'
