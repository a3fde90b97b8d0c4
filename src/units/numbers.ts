// Reading one number out of typed text: any digits, comma or point, group marks, fractions.
// Grouping rules after CLDR's marks for en, de, fr, sv, de-CH, ar-EG and hi (as seen in Intl).

const APOSTROPHES = /[\u2018\u2019\u02bc\u2032\u00b4`]/g
const VULGAR = /[\u00bc-\u00be\u2150-\u215e]/g
const ND = /\p{Nd}/u

/** A decimal digit of any script as 0-9. Runs of digits come in tens, so counting back finds the zero. */
const latinDigit = (digit: string): string => {
  const code = digit.codePointAt(0)!
  let zero = code
  while (ND.test(String.fromCodePoint(zero - 1))) zero--
  return String((code - zero) % 10)
}

/** Typed text in the one spelling the readers know: Latin digits, lower case, single spaces, ' " - ° /. */
export const plainText = (text: string): string =>
  text
    .replace(/\p{Cf}/gu, '')
    .replace(/[\u2033\u201c\u201d]/g, '"')
    .replace(APOSTROPHES, "'")
    .replaceAll("''", '"')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/[\u2010-\u2013\u2212]/g, '-')
    .replace(VULGAR, ' $&')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\P{Nd}0-9]/gu, latinDigit)
    .replaceAll('،', ',')
    .replaceAll('^', '')
    .replace(/(\p{L})[.,]+/gu, '$1 ')
    .replace(/\s+/g, ' ')
    .replace(/[.,](?! ?\d)/g, ' ')
    .replace(/ ?\bper\b ?/g, '/')
    .trim()

export const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9'

/** A number as n / d, where it ended, and whether another reading was possible. */
export type Scanned = { n: number; d: number; end: number; ambiguous: boolean; whole: boolean }

const digitsFrom = (s: string, at: number): string => {
  let end = at
  while (isDigit(s[end])) end++
  return s.slice(at, end)
}

/** Digit groups and the marks between them. A space or apostrophe joins only what looks like thousands. */
const scanGroups = (s: string, at: number) => {
  const groups = [digitsFrom(s, at)]
  let marks = ''
  let end = at + groups[0]!.length
  while (".,٫٬ '".includes(s[end] ?? '?') && isDigit(s[end + 1])) {
    const mark = s[end]!
    const group = digitsFrom(s, end + 1)
    const joins = mark === ' ' || mark === "'"
    if (joins && (group.length !== 3 || !looksGrouped([...groups, group]))) break
    groups.push(group)
    marks += mark
    end += 1 + group.length
  }
  return { groups, marks, end }
}

/** 1 to 3 digits, then groups of 3; India groups by 2 before the last 3. */
const looksGrouped = ([first = '', ...rest]: string[]): boolean =>
  /^[1-9]\d{0,2}$/.test(first) &&
  rest.every((group, i) => group.length === 3 || (group.length === 2 && i < rest.length - 1))

type Settled = { decimal: boolean; ambiguous: boolean }

/** Whether the last mark is the decimal mark. */
const settleMarks = (groups: string[], marks: string, commaGroups: boolean): Settled => {
  const last = marks.at(-1) ?? ''
  if (last === '٫') return { decimal: true, ambiguous: false }
  if (last !== ',' && last !== '.') return { decimal: false, ambiguous: false }
  if (marks.length > 1) return { decimal: marks.indexOf(last) === marks.length - 1, ambiguous: false }
  const ambiguous = groups[1]!.length === 3 && looksGrouped(groups)
  return { decimal: !ambiguous || last === '.' || !commaGroups, ambiguous }
}

/** n / d of a decimal number; kept as integers while a double holds them, so that 9 g is 0.009 kg. */
const decimal = (whole: string, part: string): { n: number; d: number } =>
  whole.length + part.length > 15
    ? { n: Number(`${whole}.${part}`), d: 1 }
    : { n: Number(whole + part), d: 10 ** part.length }

/**
 * Reads the number that starts at `at` of a plain text; null where there is none or its marks make no sense.
 * commaGroups says how a lone comma before exactly three digits is read (1,234); a lone point is a decimal
 * mark. Both set `ambiguous`.
 */
export const scanNumber = (s: string, at: number, commaGroups: boolean): Scanned | null => {
  const { groups, marks, end } = scanGroups(s, at)
  if (!marks && !groups[0]) return null
  if (!marks) return scanFraction(s, groups[0]!, end)
  const settled = settleMarks(groups, marks, commaGroups)
  const part = settled.decimal ? groups.pop()! : ''
  const grouping = settled.decimal ? marks.slice(0, -1) : marks
  if (grouping && (!looksGrouped(groups) || grouping !== grouping[0]!.repeat(grouping.length))) return null
  return { ...decimal(groups.join(''), part), end, ambiguous: settled.ambiguous, whole: !part }
}

/** A whole number, 1/2, or 1 1/2. */
const scanFraction = (s: string, first: string, end: number): Scanned | null => {
  const whole = { ...decimal(first, ''), end, ambiguous: false, whole: true }
  const mixed = s[end] === ' ' && isDigit(s[end + 1])
  const over = mixed ? digitsFrom(s, end + 1) : first
  const stroke = mixed ? end + 1 + over.length : end
  if ((s[stroke] !== '/' && s[stroke] !== '⁄') || !isDigit(s[stroke + 1])) return whole
  const under = digitsFrom(s, stroke + 1)
  const d = Number(under)
  if (!d) return null
  const n = Number(over) + (mixed ? Number(first) * d : 0)
  return { n, d, end: stroke + 1 + under.length, ambiguous: false, whole: false }
}
