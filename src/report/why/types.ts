// What an answer to "why?" is made of: a figure, the equation it comes from, what went in, and how far to trust it.
// Sources are keys of data/sources.json; the panel that shows an explanation fetches their words.

import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Shown } from '../shown'

/** The figures that can be asked; legs, days and stops by their index in the plan. */
export type About =
  | { kind: 'walking-time' | 'leg-energy' | 'leg-water'; leg: number }
  | { kind: 'day-energy' | 'ration'; day: number }
  | { kind: 'resting-energy' }
  | { kind: 'fuel'; item: string }
  | { kind: 'body-litres' | 'peak-load' }

export interface WhyContext {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  /** The draft's id of each stop of the plan, for the paths of its fields. */
  stopIds: readonly string[]
}

export interface WhyInput {
  label: string
  /** With its unit. */
  value: string
  /** The field where it can be changed. */
  path?: string | undefined
}

/** One quantity held against the range its equation was made for. */
export interface WhyBound {
  text: string
  inside: boolean
}

/** The same thing by another rule, or a part of the figure. */
export interface WhyOther {
  label: string
  /** Null where that rule has no answer. */
  value: number | null
  text: string
  sourceKeys: readonly string[]
}

export interface Explanation {
  title: string
  /** What the equation is called. */
  equation: string
  /** What it does, in a sentence or two. */
  says: string
  inputs: WhyInput[]
  /** Unrounded, in the unit the engine reckons in, and as it is shown. */
  result: { value: number; text: string }
  range: { bounds: WhyBound[]; note: string }
  /** What is done about inputs outside the range; null while all are inside. */
  instead: string | null
  sourceKeys: readonly string[]
  ignores: string
  others: { title: string; list: WhyOther[]; note: string } | null
}
