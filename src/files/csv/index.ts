// Tables (CSV) in and out, entered by this folder so that they are loaded only when asked for.

export { addTable, needsLitres, shelveTable } from './add-to-plan'
export { decodeTable, ENCODINGS, type Encoding } from './decode'
export { amountOf, FIELD_NAMES, FIELDS, type FieldName, usualUnit } from './fields'
export { gearCsv, shelfCsv } from './gear-table'
export { type Grid, type Refusal, readGrid, SEPARATORS, type Separator, tooLarge } from './grid'
export { type Column, guessLayout, isFilled, type Layout, type Target } from './guess'
export { TABLE_CAPS } from './limits'
export { packsCsv } from './packs-table'
export { readingRows, readRows } from './rows'
export { looksSame } from './same'
export type * from './types'
export type { Marks } from './write'
