// The text to put in an input for a stored value: a bare number in the field's unit, or h:mm.
// Made for the way back: it is the shortest text, up to 10 significant digits, that parseQuantity reads as
// the same value; where no such text exists it is the 10-digit one, off by 5e-10 of the value at most, once.
import { inUnit } from './format'
import { bareUnitOf, type Quantity } from './kinds'
import { type ParseOptions, parseQuantity } from './parse'
import { numberFormat } from './shown'

const MOST_DIGITS = 10

/** Written without an exponent. */
const isPlain = (x: number): boolean => Math.abs(x) >= 1e-6 && Math.abs(x) < 1e15

/**
 * A stored value as editable text: 1.4, 0.5, 20 (percent), 5:20. Written and read again it does not move: the text
 * of the value read back is the same text. locale ('en') sets the decimal mark. '' for a value that is not finite.
 */
export const editText = (
  kind: Quantity,
  value: number,
  options: ParseOptions & { locale?: string },
): string => {
  if (!Number.isFinite(value)) return ''
  const { system, bareUnit = bareUnitOf(kind, system), locale = 'en' } = options
  const x = inUnit(kind, value, bareUnit) + 0
  const reads = (text: string): boolean => {
    const parsed = parseQuantity(kind, text, options)
    return parsed.ok && parsed.value === value
  }
  // Reading back costs more than comparing, so only what can be equal is read.
  const near = (digits: number): boolean => Math.abs(Number(x.toPrecision(digits)) - x) <= 1e-12 * Math.abs(x)
  const textIn = (digits: number): string =>
    // Without a formatter, which takes long to make, where the digits are all there are.
    locale === 'en' && near(digits) && (x === 0 || isPlain(x))
      ? String(Number(x.toPrecision(digits)))
      : numberFormat(locale, { maximumSignificantDigits: digits }).format(x)
  let text = ''
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    if (digits < MOST_DIGITS && !near(digits)) continue
    text = textIn(digits)
    // Here a comma before exactly three decimals would read as thousands; a fourth decimal settles it.
    if (system === 'us' && /^-?\d{1,3},\d{3}$/.test(text)) text += '0'
    if (reads(text)) break
  }
  if (kind !== 'duration') return text
  const minutes = Math.round(value * 60)
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
  return clock.length < text.length && reads(clock) ? clock : text
}
