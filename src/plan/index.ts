export { type OwnFacts, type Takes, withoutOwnFacts } from './app-fields'
export { CAPS, MOST_DAYS } from './caps'
export { checkAhead, isLongToSettle } from './check-ahead'
export { type CheckedDraft, checkDraft, checkTyped } from './check-draft'
export { cleanText, cleanWords } from './clean-words'
export { completePack, completePlan, fullnessNotClosing } from './complete'
export * as defaults from './defaults'
export { documentOfPerson, withPacksOnly } from './document-parts'
export {
  type Draft,
  type DraftDocument,
  type DraftFuel,
  type DraftItem,
  type DraftLeg,
  type DraftPack,
  type DraftPerson,
  type DraftSetup,
  type DraftStop,
  emptyDraft,
  fromPlanDocument,
  type ShelfLink,
  type Swap,
  type Typed,
  toPlanDocument,
} from './draft'
export {
  addStop,
  duplicateStop,
  LEG_WEATHER,
  moveStop,
  removeStop,
  withOneAir,
  withStops,
  withTripWeather,
} from './edit-stops'
export {
  addItem,
  addPack,
  addSetup,
  duplicateItem,
  duplicatePack,
  duplicateSetup,
  foodFor,
  moveItem,
  movePack,
  moveSetup,
  putFoodInto,
  removeItem,
  removePack,
  removeSetup,
  type Start,
  setAtHome,
} from './edits'
export { fieldOf } from './field-of'
export { fieldAt, fieldPath, hasPlace, pathParts, stillTyped } from './field-path'
export { describeField, fieldWord, personName } from './field-words'
export {
  type Amount,
  type Choice,
  choiceLabel,
  choicesOf,
  choiceWord,
  FIELDS,
  type Field as FieldRow,
  type ItemDocument,
  isWithin,
  LIMITS,
  type Limit,
  PACKING_FACTOR,
  type PackDocument,
  type PackingDocument,
  type PartyDocument,
  type PersonDocument,
  type PlanDocument,
  type SetupDocument,
  type StopDocument,
  tableWord,
  type WrittenPlan,
} from './fields'
export { TRIP_FORMAT, TRIP_VERSION } from './format'
export { copyName, groupedBy } from './lists'
export { type MainBody, mainBodyOf, withMainBody } from './main-body'
export { itemName, packName, setupName, tripName } from './names'
export { withoutOldNo } from './old-no'
export { tagsIn } from './own-tags'
export { withPaceBy } from './pace'
export {
  completeAny,
  isParty,
  type Parsed,
  type ParsedAny,
  parseAny,
  parseAnyText,
  parseAnyValue,
  parseForeign,
  parsePlan,
  parsePlanText,
  pathText,
  problemInWords,
} from './parse'
export {
  addPerson,
  canAddPerson,
  oneForEach,
  pinItem,
  removePerson,
  setOwner,
  staysWithOwner,
  takenBy,
  takesPath,
  withShared,
} from './people'
export type { Problem } from './problem'
export { QUICK_DAY, type QuickTrip, quickTrip } from './quick-trip'
export { type LeftOut, MASS_KG as STAND_IN_MASS_KG } from './repair'
export { setField } from './set-field'
export { type Settled, type SettledAlone, settle, settleAny } from './settle'
export { plainLetters, soughtWords } from './sought'
export { withSpread } from './spread-masses'
export { keepTag, type Rating, readRating, type Tag } from './tag'
export { type FoodPlanned, type LeftAt, type Spread, TRIP_LOG_LIMITS, type TripLog } from './trip-log'
export { isMarked, mark, withoutLog, withoutLogTexts, withWeighedIn } from './trip-marks'
export type * from './types'
