// Reading the unit after a number: the longest spelling the table knows, then "/" and a second one.
// Units of the wanted dimension go first, so that 5ft3 is feet and inches in a length, cubic feet in a volume.
import { isDigit } from './numbers'
import { type Measure, measurePer, unitSpelled } from './table'

const LONGEST_SPELLING = 14
const LETTER = /\p{L}/u

/** A unit and its spelling, no unit ('' and undefined), or what no unit is called. */
export type Word = { measure: Measure | undefined; word: string; end: number } | { unknown: string }

type Hit = { measure: Measure; word: string; end: number }

const skipSpace = (s: string, at: number): number => (s[at] === ' ' ? at + 1 : at)

/** A spelling ends where neither a word nor a number would go on. */
const endsAt = (s: string, at: number): boolean => {
  const last = s[at - 1]!
  const next = s[at] ?? ' '
  return !(LETTER.test(last) && LETTER.test(next)) && !(isDigit(last) && isDigit(next))
}

const longest = (s: string, from: number, dimension?: string): Hit | undefined => {
  let hit: Hit | undefined
  let word = ''
  for (let at = skipSpace(s, from); at < s.length && word.length < LONGEST_SPELLING; at++) {
    if (s[at] === ' ' && isDigit(s[at + 1])) break
    if (s[at] === ' ') continue
    word += s[at]
    const measure = unitSpelled(word)
    if (!measure || !endsAt(s, at + 1)) continue
    if (dimension === undefined || measure.dimension === dimension) hit = { measure, word, end: at + 1 }
  }
  return hit
}

/** The word as far as the next space or digit; '' where it is no word at all. */
const unknownAt = (s: string, at: number): Word => {
  const word = s.slice(skipSpace(s, at)).split(/[\s\d]/)[0]!
  return { unknown: LETTER.test(word) ? word.slice(0, 20) : '' }
}

/** The unit that starts at `at` of a plain text, after an optional space. */
export const readUnit = (s: string, at: number, dimension: string): Word => {
  const [upper = '', lower = ''] = dimension.split('/')
  const next = s[skipSpace(s, at)]
  if (next === undefined || isDigit(next)) return { measure: undefined, word: '', end: at }
  const first = longest(s, at, dimension) ?? longest(s, at, upper) ?? longest(s, at)
  if (!first) return unknownAt(s, at)
  const stroke = skipSpace(s, first.end)
  if (s[stroke] !== '/') return first
  const second = longest(s, stroke + 1, lower) ?? longest(s, stroke + 1)
  if (!second) return unknownAt(s, at)
  return { measure: measurePer(first.measure, second.measure), word: first.word, end: second.end }
}
