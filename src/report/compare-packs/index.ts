export { type Beside, packsApart, packsBeside } from './beside'
export { type Comparison, comparisonOf, NOT_BEATEN, priceText, type Standing, standingOut } from './compare'
export { type BrimLine, brimLineOf, type Corner, cornerOf, fieldText, foremostText } from './field'
export { NO_FILTERS, type PackFilters, packFilter, setupFilter } from './filter'
export { type Help, helpFor, helpQuestion } from './help'
export { type JudgedPack, judgedPacks, knownPack, partlyKnown, rankOf } from './judged-packs'
export { type KnownPack, type Partly, partlyJudged, wholePack } from './known-pack'
export {
  MEASURE_NAMES,
  MEASURE_WORDS,
  measureIn,
  measureWords,
  OWN_LIMIT_NAMES,
  OWN_LIMITS,
  ownWords,
  POWERS,
} from './own-figures'
export {
  axisUnit,
  columnsIn,
  comparedFigure,
  FIGURE_NAMES,
  type FigureName,
  figureText,
  headText,
  onAxis,
  PACK_FIGURES,
  toldFigure,
} from './pack-figures'
export { type Area, inLineOrder, isInArea, type LineOrder, linesOf, type PackLine } from './pack-lines'
export { daysText, type ReachInWords, reachInWords, reachText, type StretchInWords } from './reach'
export { remedyLabel } from './remedy-label'
export { type Asked, askedBy, askedLine, ENOUGH_UNTOLD, requirementRows } from './requirement'
export { suitableSentence } from './suitable'
export { type AllTrips, allTripsSteps, type TripAsked } from './trips'
