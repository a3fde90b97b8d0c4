// Which kinds a name may mean: by the words they share, rare words counting for more, and by the mass if there is one.
// The weights are judgements of ours, tried on the names in tests/published/kinds.test.ts.

import type { LitresRange } from '../types'
import { litresOfKind } from './apply'
import { buildOf, type Kind, kinds, placeOf } from './table'
import { wordsOf } from './words'

export interface Suggestion {
  kind: Kind
  /**
   * Whether it may be put in ahead of the reader's word: it stands out, or the others that the name may as well mean
   * take the same room at this mass.
   */
  sure: boolean
  /** Whether the name says what it is, if not which: a "sleeping bag" may be any of them. */
  likely: boolean
}

interface Named {
  name: string
  massKg?: number | undefined
  /** A day's food is a kind of its own, whether or not its name says so; a night's gas is no cartridge. */
  use?: string | undefined
  /** Whether the last word may still be in the middle of being typed. */
  typing?: boolean
}

interface Phrase {
  kind: Kind
  words: string[]
  /** The word that says what it is: "liner" in "sleeping bag liner". */
  head: string
  /** Words after a comma, and figures, only tell sizes apart. */
  details: string[]
  known: string[]
}

const MOST = 5
const LEAST_SCORE = 0.25
const SURE_SCORE = 0.5
const SURE_LEAD = 1.1
/** What scores less than this share of the best is not worth a button. */
const LEAST_OF_BEST = 0.45
const ODD_MASS = 0.55
/** Of a word that no kind has; figures and units say little. */
const unknownWeight = (word: string) => (isDetail(word) ? 0.25 : 1)
const DETAIL_SHARE = 0.3

const phrases: Phrase[] = kinds.flatMap(kind =>
  [kind.kind, ...(kind.also ?? [])].map(name => phrase(kind, name)),
)

function isDetail(word: string): boolean {
  return /\d/.test(word) || word.length < 3
}

function phrase(kind: Kind, name: string): Phrase {
  const comma = name.indexOf(',')
  const [main, rest] = comma < 0 ? [name, ''] : [name.slice(0, comma), name.slice(comma)]
  const words = wordsOf(main)
  const head = wordsOf(main.split(/ with | in | and /)[0]!).findLast(word => !isDetail(word)) ?? ''
  const named = words.filter(word => !isDetail(word))
  const details = [...words.filter(isDetail), ...wordsOf(rest)]
  return { kind, words: named, head, details, known: [...named, ...details] }
}

/** What a word counts that is in another name of the kind: "inflatable sleeping pad" is an inflatable pad. */
const OTHER_NAME_SHARE = 0.7
const vocabulary = new Map(
  kinds.map(kind => [kind, new Set(phrases.filter(of => of.kind === kind).flatMap(({ known }) => known))]),
)

/** The phrases that hold a word. */
const holding = new Map<string, Phrase[]>()
for (const of of phrases)
  for (const word of new Set(of.known)) holding.set(word, [...(holding.get(word) ?? []), of])

const weights = weigh()

function weigh(): Map<string, number> {
  const inKinds = new Map<string, Set<Kind>>()
  for (const { kind, words, details } of phrases)
    for (const word of [...words, ...details]) inKinds.set(word, (inKinds.get(word) ?? new Set()).add(kind))
  return new Map([...inKinds].map(([word, of]) => [word, Math.log(1 + kinds.length / of.size) / 2]))
}

/** Up to five kinds a name may mean, the likeliest first. */
export function suggestKinds({ name, massKg, use, typing = false }: Named): Suggestion[] {
  const words = wordsOf(use === 'daily' && !typing ? `${name} per day` : name)
  if (words.length === 0 || use === 'nightly') return []
  const best = new Map<Kind, { score: number; headed: boolean }>()
  // While a word is being typed it may be the start of any.
  const candidates = typing ? phrases : new Set(words.flatMap(word => holding.get(word) ?? []))
  for (const of of candidates) {
    const score = scoreOf(of, words, typing) * likelihood(of.kind, massKg)
    const old = best.get(of.kind)
    if (score >= LEAST_SCORE && score > (old?.score ?? 0))
      best.set(of.kind, { score, headed: words.includes(of.head) })
  }
  const all = [...best].sort(([, a], [, b]) => b.score - a.score)
  const top = all[0]?.[1].score ?? 0
  // What the name may mean as well as the first.
  const level = all.slice(1).filter(([, { score }]) => score * SURE_LEAD > top)
  return all
    .slice(0, MOST)
    .filter(([, { score }]) => score >= top * LEAST_OF_BEST)
    .map(([kind, { score, headed }], i) => {
      const likely = headed && score >= SURE_SCORE
      const stands = () =>
        likelihood(kind, massKg) > ODD_MASS && level.every(([other]) => isAlike(kind, other, massKg))
      return { kind, likely, sure: i === 0 && likely && stands() }
    })
}

/** Whether it makes no odds which of two kinds it is: each takes what the other may, and rides in the same place. */
function isAlike(one: Kind, other: Kind, massKg: number | undefined): boolean {
  if (massKg === undefined || buildOf(one) !== buildOf(other)) return false
  if (placeOf(one).stow !== placeOf(other).stow) return false
  const [a, b] = [one, other].map(kind => litresOfKind(kind, { massKg }))
  const holds = ({ low, high }: LitresRange, { typical }: LitresRange) => low <= typical && typical <= high
  return holds(a!, b!) && holds(b!, a!)
}

/** How much of the name and of the phrase is the same, 0 to 1; less where what it is differs. */
function scoreOf({ kind, words, head, details, known }: Phrase, name: string[], typing: boolean): number {
  const isSame = (word: string, other: string, last: boolean) =>
    word === other || (typing && last && word.length >= 3 && other.startsWith(word))
  let shared = 0
  let asked = 0
  const found = new Set<string>()
  name.forEach((word, i) => {
    const hit = known.find(other => isSame(word, other, i === name.length - 1))
    const weight = weights.get(hit ?? word) ?? unknownWeight(word)
    asked += weight
    if (hit === undefined) {
      if (vocabulary.get(kind)!.has(word)) shared += weight * OTHER_NAME_SHARE
      return
    }
    shared += weight
    found.add(hit)
  })
  if (found.size === 0) return 0
  const sum = (list: string[]) => list.reduce((total, word) => total + weights.get(word)!, 0)
  const missing = words.filter(word => !found.has(word))
  const missingDetails = details.filter(word => !found.has(word))
  const whole = shared + sum(missing) + DETAIL_SHARE * sum(missingDetails)
  const alike = (2 * shared) / (asked + whole)
  return found.has(head) ? alike : alike / 2
}

/** A mass far from the usual speaks against a kind, one among the usual for it. A set may be weighed by the piece. */
function likelihood({ massG, massLowG, massHighG, pieces = 1 }: Kind, massKg: number | undefined): number {
  if (massKg === undefined) return 1
  const g = massKg * 1000
  const fits = (stretch: number) =>
    [1, pieces].some(n => g * n >= massLowG / stretch && g * n <= massHighG * stretch)
  if (!fits(1)) return fits(1.6) ? 1 : ODD_MASS
  // Of two that fit, the nearer one comes first, by too little to stand out.
  return 1.2 - NEARER * Math.min(...[1, pieces].map(n => Math.abs(Math.log((g * n) / massG))))
}

const NEARER = 0.02
