// Quantities as people type and read them, and the exact factors between units.
// Everything is pure; what is stored is always in the kind's own unit (kg, L, km, m, cm, °C, h, …).
export { editText } from './edit'
export type { Ratio } from './exact'
export {
  cubicInchL,
  fluidOunceL,
  footM,
  gallonL,
  inchM,
  kcalKj,
  mileM,
  ounceKg,
  poundKg,
  quartL,
} from './exact'
export type { FormatOptions, ShownUnit } from './format'
export { formatQuantity, inUnit, rangeText } from './format'
export type { Quantity, System } from './kinds'
export { bareUnitOf, examplesOf, unitChoices } from './kinds'
export type { Parsed, ParseOptions } from './parse'
export { parseQuantity } from './parse'
export { capital, counted, countText, listText } from './phrases'
export type { Round } from './shown'
export type { Unit } from './table'
