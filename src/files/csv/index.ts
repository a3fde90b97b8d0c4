// Tables (CSV) in and out, entered by this folder so that they are loaded only when asked for.

export { addTable, needsLitres, shelveTable } from './add-to-plan'
export { amountIn, type Field, unitIn } from './catalogue'
export { decodeTable, ENCODINGS, type Encoding } from './decode'
export { FIELD_NAMES, FIELDS, type FieldName } from './fields'
export { gearCsv, shelfCsv } from './gear-table'
export { type Grid, type Refusal, readGrid, SEPARATORS, type Separator, tooLarge } from './grid'
export { type GearColumn, type GearLayout, guessLayout, type Target } from './guess'
export { type Column, isFilled, type Layout } from './layout'
export { TABLE_CAPS } from './limits'
export { PACK_FIELD_NAMES, PACK_FIELDS, type PackFieldName } from './packs-fields'
export {
  guessPacksLayout,
  isTableOfPacks,
  type PackLayout,
  plainLitresHeading,
  reckonedHeadings,
  unitlessMasses,
} from './packs-guess'
export { lacking, type PackFacts, type SetupFacts, type TablePack } from './packs-join'
export { type ChangedPack, compareWithPacks, type PackChange, takePacks } from './packs-merge'
export { type PacksRead, readPackRows } from './packs-rows'
export { packsCsv } from './packs-table'
export { readingRows, readRows } from './rows'
export { looksSame } from './same'
export type * from './types'
export type { Marks } from './write'
