// What a caution is: its signal word, its text, and the figures in it that the app has reckoned.

import type { Reckoning } from '../reckon'

export interface Caution {
  signal: 'WARNING' | 'CAUTION' | 'NOTICE'
  about: 'water' | 'load' | 'heat' | 'food' | 'fuel' | 'energy' | 'model'
  text: string
  /** The same in one line of a phone, where it is about this trip; absent where it holds on every trip. */
  short?: string
  /** The stops it is about, by index, where it can be shown on the way. */
  at?: number[]
  /** The same of the lesser cases, a sentence each. */
  more?: string[]
  /** Belongs beside the answer itself, as every warning does. */
  atAnswer?: true
  /** The figures in it that the app has reckoned, as "why?" asks for them; absent where there are none. */
  asks?: { figure: string; about: Asks }[]
}

type Asks =
  | { kind: 'carry'; stop: number }
  | { kind: 'load-share'; setup?: number }
  | { kind: 'heat' | 'heat-table'; leg: number }
  | { kind: 'day'; day: number }
  | { kind: 'resting-energy' }

/** On paper, where nothing opens. */
export const inFull = ({ text, more = [] }: Caution): string => [text, ...more].join(' ')

/** What they are called where a caution is about one thing only. */
export const ITS_FIGURES = 'Its figures'

export const itsFigures = (about: Asks) => [{ figure: ITS_FIGURES, about }]

/** Whether a caution stands beside the answer; the others wait behind it. */
export const belongsAtAnswer = ({ signal, atAnswer }: Caution): boolean =>
  signal === 'WARNING' || atAnswer === true

/** Whether it is about this trip and not about every one. */
export const isOfThisTrip = ({ short }: Caution): boolean => short !== undefined

/** Of the set-ups the lightest to carry; null without any: the contents alone then stand for it. */
export function lightestSetup(packs: Reckoning['packs']): number | null {
  if (packs.length === 0) return null
  return packs.reduce((best, p, i) => (p.carriedKg < packs[best]!.carriedKg ? i : best), 0)
}
