// Numbers as text: rounding, decimal mark and digits of a language, groups of three, the no-break space.
// Digits are grouped by a narrow space from five on (SI practice) in every language, so that what is shown
// can be typed back; exact halves go to the even neighbour (NIST SP 811 B.7.1, from memory).
export const NBSP = '\u00a0'
const GROUP = '\u202f'
const MINUS = '\u2212'

/** Towards the nearest, towards more, towards less. */
export type Round = 'nearest' | 'up' | 'down'

const formats = new Map<string, Intl.NumberFormat>()

/** One formatter per locale and options: making one costs far more than using it. */
export const numberFormat = (locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat => {
  const key = locale + JSON.stringify(options)
  let format = formats.get(key)
  if (!format) {
    format = new Intl.NumberFormat(locale, { ...options, useGrouping: false })
    formats.set(key, format)
  }
  return format
}

/** x to so many decimals. Twelve digits are taken as meant, so that 0.1 + 0.2 goes up to 0.3, not 0.4. */
export const rounded = (x: number, digits: number, round: Round = 'nearest'): number => {
  const scaled = Number((x * 10 ** digits).toPrecision(12))
  const whole = round === 'up' ? Math.ceil(scaled) : round === 'down' ? Math.floor(scaled) : halfEven(scaled)
  return whole / 10 ** digits + 0
}

const halfEven = (x: number): number => {
  const up = Math.round(x)
  return up - x === 0.5 && up % 2 ? up - 1 : up
}

const grouped = (digits: string): string => {
  if (digits.length < 5) return digits
  const all = [...digits]
  return all.map((digit, i) => (i && (all.length - i) % 3 === 0 ? GROUP + digit : digit)).join('')
}

/** Up to here every decimal of a rounded number is one that it was rounded to. */
const EXACT = 2 ** 53

/** An already rounded number with max decimals, without its trailing zeros beyond min. */
export const numberText = (x: number, max: number, { min = max, locale = 'en' } = {}): string => {
  // The usual case by hand: a formatter of a language takes longer to make than a whole screen of numbers.
  if (locale !== 'en' || !(Math.abs(x) * 10 ** max < EXACT)) return numberTextIn(locale, x, { min, max })
  const [whole = '', decimals = ''] = Math.abs(x).toFixed(max).split('.')
  let end = decimals.length
  while (end > min && decimals[end - 1] === '0') end--
  const sign = x < 0 || Object.is(x, -0) ? MINUS : ''
  return sign + grouped(whole) + (end > 0 ? `.${decimals.slice(0, end)}` : '')
}

const numberTextIn = (locale: string, x: number, { min, max }: { min: number; max: number }): string =>
  numberFormat(locale, { minimumFractionDigits: min, maximumFractionDigits: max })
    .formatToParts(x)
    .map(({ type, value }) => (type === 'integer' ? grouped(value) : type === 'minusSign' ? MINUS : value))
    .join('')

/** The number with the symbol of its unit, never to be parted. */
export const withSymbol = (number: string, unit: string): string =>
  unit === '' || unit === 'x' ? number : `${number} ${unit}`.replaceAll(' ', NBSP)
