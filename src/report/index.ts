export { ANSWERS, isYes } from './answers'
export { type CarriedPart, carriedAt } from './carried'
export { belongsAtAnswer, type Caution, inFull, isOfThisTrip } from './caution'
export { cautionsOf, shortCautions } from './cautions'
export { answersChanged, type Change, changeText, signedText } from './changes'
export { comparePlansOf, type PlanComparison, tripsCompared } from './compare-plans'
export { contentsLimits } from './contents-limits'
export { byRoom, type Cost, changeOf, costText } from './costs'
export { chanceText, type Formats, formatsIn, marginText } from './formats'
export { FIT_LINE, GENERAL_CAUTIONS, GENERAL_LINE } from './general-cautions'
export { framelessLimit } from './limit-names'
export { loadThen, safeLoadKg } from './loads'
export {
  leastText,
  type Missing,
  type MissingThing,
  missingOf,
  notInItText,
  takesNothing,
  toldChance,
  withoutText,
} from './missing'
export { type LeftLine, leftLines, skipText, untilNext } from './on-the-way'
export { momentAt, momentIndex, placeText, sharesByName, walkOf } from './places'
export { remedyInWords, shortfallInWords } from './remedies'
export { shortReason } from './short-reason'
export { type SwapCost, swapText } from './swaps'
export { valueText } from './value-text'
export { kindOfVerdict } from './verdict-words'
export { setupInWords, type Verdict } from './verdicts'
