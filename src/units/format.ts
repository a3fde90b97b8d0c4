// Stored quantities for people: 900 g, 2.35 kg, 45.2 L, 24 °C, 20 %; one unit per value, except that lb oz,
// ft in and h min go together. How many decimals each unit shows is a choice of ours: kitchen-scale resolution
// for masses, 0.1 oz and 0.1 lb their like, no more for litres than makers state.
import { bareUnitOf, type Quantity, type System, scaleOf } from './kinds'
import { NBSP, numberText, type Round, rounded, withSymbol } from './shown'
import { measureOf, type Unit } from './table'

/** A unit to show, or two that go together. */
export type ShownUnit = Unit | 'lb oz' | 'ft in' | 'h min'

/** unit and digits (decimals) replace the defaults; locale ('en') sets the decimal mark and the digits. */
export type FormatOptions = {
  system: System
  unit?: ShownUnit
  digits?: number
  round?: Round
  locale?: string
}

type Pair = readonly [big: Unit, small: Unit, per: number, digits: number]

const PAIRS: Partial<Record<ShownUnit, Pair>> = {
  'lb oz': ['lb', 'oz', 16, 1],
  'ft in': ['ft', 'in', 12, 0],
  'h min': ['h', 'min', 60, 0],
}

const TWO_DECIMALS: Unit[] = ['kg', 'gal', 'cu ft', 'L/h', 'qt/h', 'kg/L', 'g/mL', 'oz/L', 'oz/lb', '']
const ONE_DECIMAL = 'lb oz st L qt pt cup km mi cm in h km/h mph m/s lb/cu_ft g/L fl_oz'.split(' ')
// Shown without trailing zeros: 60 cm, 9.5 cm.
const TRIMMED: Unit[] = ['cm', 'in', 'L/h', 'qt/h', '']

/** The value of a stored quantity in another unit. Throws RangeError for a unit of another kind. */
export const inUnit = (kind: Quantity, value: number, unit: Unit): number => {
  const measure = measureOf(unit)
  const { num, den } = scaleOf(kind, measure)
  return (value * den) / num + measure.zeroAt
}

const unitFor = (kind: Quantity, value: number, { system, unit, round }: FormatOptions): ShownUnit => {
  if (unit !== undefined) return unit
  if (kind === 'duration') return 'h min'
  if (kind !== 'mass') return bareUnitOf(kind, system)
  if (system === 'us') return 'lb oz'
  return Math.abs(rounded(value * 1000, 0, round)) < 1000 ? 'g' : 'kg'
}

const usualDigits = (kind: Quantity, x: number, unit: Unit): number => {
  if (kind === 'count') return 0
  if (unit === 'g') return x && Math.abs(rounded(x, 1)) < 10 ? 1 : 0
  return TWO_DECIMALS.includes(unit) ? 2 : ONE_DECIMAL.includes(unit.replace(' ', '_')) ? 1 : 0
}

/**
 * A stored value as text with its unit. Without `unit`, masses choose g or kg (lb and oz) and `digits` counts the
 * decimals of kg (oz). A value that is not finite is shown as "–". Throws RangeError for a unit of another kind.
 */
export const formatQuantity = (kind: Quantity, value: number, options: FormatOptions): string => {
  if (!Number.isFinite(value)) return '–'
  const unit = unitFor(kind, value, options)
  const pair = PAIRS[unit]
  return pair
    ? pairText(kind, value, { ...options, pair })
    : simpleText(kind, value, { ...options, shown: unit as Unit })
}

const simpleText = (kind: Quantity, value: number, options: FormatOptions & { shown: Unit }): string => {
  const { shown: unit, locale = 'en', round } = options
  const x = inUnit(kind, value, unit)
  const usual = usualDigits(kind, x, unit)
  // The decimals asked for are those of kg where g was chosen here.
  const digits = unit === 'g' && !options.unit ? usual : (options.digits ?? usual)
  const number = rounded(x, digits, round)
  const trims = options.digits === undefined && TRIMMED.includes(unit)
  // Money has whole amounts or both decimals, never 179.5.
  const min = trims && (kind !== 'money' || Number.isInteger(number)) ? 0 : digits
  return withSymbol(numberText(number, digits, { min, locale }), unit)
}

/** Rounds in the small unit first and carries after, so that 15.96 oz to whole ounces is 1 lb 0 oz. */
const pairText = (kind: Quantity, value: number, options: FormatOptions & { pair: Pair }): string => {
  const { pair, round, locale = 'en' } = options
  const [big, small, per, usual] = pair
  const digits = options.digits ?? usual
  const all = rounded(inUnit(kind, value, small), digits, round)
  const bigs = Math.trunc(all / per)
  const rest = rounded(all - bigs * per, digits)
  if (!bigs) return withSymbol(numberText(rest, digits, { locale }), small)
  const head = withSymbol(numberText(bigs, 0, { locale }), big)
  if (!rest && big === 'h') return head
  return head + NBSP + withSymbol(numberText(Math.abs(rest), digits, { min: 0, locale }), small)
}

/**
 * Two values of one kind as a range with one unit: 42–48 L; one value where both read the same. The low end is
 * rounded down and the high end up, so that a range never reads narrower than it is, unless `round` says else.
 */
export const rangeText = (kind: Quantity, low: number, high: number, options: FormatOptions): string => {
  if (!Number.isFinite(low + high)) return '–'
  const { digits: asked, round, locale = 'en' } = options
  const shown = unitFor(kind, high, options)
  const [big, small, per] = PAIRS[shown] ?? [shown as Unit]
  const unit = small && per && inUnit(kind, high, small) < per ? small : big
  const digits = asked ?? usualDigits(kind, inUnit(kind, high, unit), unit)
  const from = rounded(inUnit(kind, low, unit), digits, round ?? 'down')
  const to = rounded(inUnit(kind, high, unit), digits, round ?? 'up')
  const max = Number.isInteger(from) && Number.isInteger(to) ? 0 : digits
  const text = numberText(to, max, { locale })
  if (from === to) return withSymbol(text, unit)
  return withSymbol(numberText(from, max, { locale }) + (from < 0 ? ' to ' : '–') + text, unit)
}
