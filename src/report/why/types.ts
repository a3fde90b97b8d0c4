// What an answer to "why?" is made of: a figure, the equation it comes from, what went in, and how far to trust it.
// Sources are keys of data/sources.json; the panel that shows an explanation fetches their words.

import type { Plan } from '../../plan'
import type { DryCamp, OnTheWay, Reckoning, Remedy, Working } from '../../reckon'
import type { KnownPack } from '../compare-packs'
import type { Formats } from '../formats'
import type { Method } from '../measuring'

/** The figures that can be asked; legs, days, stops, moments and set-ups by their index in the plan. */
export type About =
  | { kind: 'walking-time' | 'leg-energy' | 'leg-water'; leg: number }
  | { kind: 'day' | 'day-energy' | 'ration'; day: number }
  | { kind: 'resting-energy' }
  | { kind: 'fuel' | 'cartridges'; item: string }
  | { kind: 'body-litres' | 'peak-load' | 'base-weight' | 'facts' | 'sure' }
  | { kind: 'load-share'; setup?: number }
  | { kind: 'heat' | 'heat-table'; leg: number }
  | { kind: 'moment-load' | 'moment-litres'; moment: number; pack?: number }
  | { kind: 'carry'; stop: number; camps?: readonly DryCamp[] }
  | { kind: 'on-the-way'; left: OnTheWay }
  | { kind: 'set-up' | 'reach' | 'bears'; setup: number }
  | { kind: 'fit'; pack: number; item: string }
  | { kind: 'placing'; pack: number }
  | { kind: 'remedies'; setup: number; remedies: readonly Remedy[] }
  | PlanAbout
  | FoundAbout

/** Figures of plans that need not be the open one: they bring what they are reckoned from. */
export type PlanAbout =
  | { kind: 'tag'; plan: Plan; known: KnownPack }
  | { kind: 'asked'; trips: readonly NamedPlan[]; packKg: number | null }
  | { kind: 'trips'; trips: readonly NamedPlan[]; setup: number }
  | { kind: 'cover'; trips: readonly NamedPlan[] }

/** Figures that are found before they are part of a plan, with all they come from. */
export type FoundAbout =
  | { kind: 'measured'; method: Method; readings: Readonly<Record<string, number>>; soft: boolean }
  | {
      kind: 'days-food'
      portions: readonly { name: string; massKg: number; kcal: number; litres: number }[]
      /** How much more room bags take than what is in them. */
      packing: number
    }
  | { kind: 'costs'; things: readonly { name: string; text: string }[] }
  /** `name` is that of the item as it is, `things` what it may be instead. */
  | { kind: 'swaps'; name: string; things: readonly { name: string; text: string }[] }
  | { kind: 'noted'; title: string; says: string; lines: readonly { label: string; value: string }[] }
  | { kind: 'track'; legs: readonly TrackLeg[]; pace: Plan['trip']['pace']; days: number }

/** A leg of a track, with where along the way it ends; climb and descent null where they are not known. */
interface TrackLeg {
  name: string
  atKm: number
  km: number
  ascentM: number | null
  descentM: number | null
  hours: number
}

export interface NamedPlan {
  name: string
  plan: Plan
}

/** A plan with its Reckoning: enough for what a pack must offer. */
export interface PlanContext {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** The draft's id of each stop of the plan, for the paths of its fields. */
  stopIds: readonly string[]
  /** The same of each pack, with those of its set-ups; absent where the plan is not the open one. */
  packIds?: readonly { id: string; setupIds: readonly string[] }[]
}

export interface WhyContext extends PlanContext {
  working: Working
}

export interface WhyInput {
  label: string
  /** With its unit. */
  value: string
  /** Where the value comes from, where it is a setting: published, common practice, ours, or yours. */
  from?: string | undefined
  /** The field where it can be changed. */
  path?: string | undefined
}

/** What a sum is made of. */
export interface WhyPart {
  label: string
  /** What it adds, unrounded, in the unit of the result; negative where it is taken off. */
  value: number
  text: string
  path?: string | undefined
  /** All that is too small to be named: it stands last, whatever it comes to. */
  isRest?: boolean
  /** What this part is itself made of; together they are its value. */
  of?: WhyPart[]
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
  /** Where the figure is a sum: all of it, the largest part first. */
  parts?: WhyPart[]
  /** Whether the parts as they are shown do not add up to the figure as it is shown. */
  rounded?: boolean
  inputs: WhyInput[]
  /** Unrounded, in the unit the engine reckons in, and as it is shown. */
  result: { value: number; text: string }
  range: { bounds: WhyBound[]; note: string }
  /** What is done about inputs outside the range; null while all are inside. */
  instead: string | null
  sourceKeys: readonly string[]
  /** Empty where nothing is left out. */
  ignores: string
  others: { title: string; list: WhyOther[]; note: string } | null
}
