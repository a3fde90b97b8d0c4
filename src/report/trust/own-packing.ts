// The hiker's own packings as one: the factor they come to, and whether a trip reckons with it.

import type { Draft, Settings } from '../../plan'
import { CALIBRATION_LIMITS, combineObservations } from '../../reckon'

export interface OwnPacking {
  count: number
  factor: number
  /** As a share of the litres. */
  spread: number
}

/** Settings hold a spread up to 1: packings that differ by more say nothing in any case. */
const MOST_SPREAD = 1

/** Null where there are none. */
export function ownPacking(packings: readonly { factor: number }[]): OwnPacking | null {
  // What was brought in from a file may hold anything.
  const { min, max } = CALIBRATION_LIMITS.factor
  const sound = packings.filter(({ factor }) => factor >= min && factor <= max)
  const { personalFactor, personalFactorSpread } = combineObservations(sound)
  if (personalFactorSpread === null) return null
  return {
    count: sound.length,
    factor: personalFactor,
    spread: Math.min(MOST_SPREAD, personalFactorSpread),
  }
}

const alike = (a: number, b: number) => Math.abs(a - b) < 1e-6

/** Whether a trip's settings are those that the packings come to. */
export function reckonsWith(
  { personalFactor, personalFactorSpread }: Pick<Settings, 'personalFactor' | 'personalFactorSpread'>,
  { factor, spread }: OwnPacking,
): boolean {
  return alike(personalFactor, factor) && personalFactorSpread !== null && alike(personalFactorSpread, spread)
}

/** The trip set to reckon with the packings; null: with the general model. */
export function reckonWith(draft: Draft, own: OwnPacking | null): Draft {
  const { personalFactor: _factor, personalFactorSpread: _spread, ...others } = draft.settings ?? {}
  const settings = own ? { ...others, personalFactor: own.factor, personalFactorSpread: own.spread } : others
  return { ...draft, settings }
}

/** Further than this share from the others, or from the general model where there are none, something may be amiss. */
const ODD = 0.3

/** What to look at where a factor lies far from the others; null where it does not. */
export function oddText(factor: number, others: readonly number[]): string | null {
  const mean = others.length ? others.reduce((sum, other) => sum + other, 0) / others.length : 1
  const off = factor / mean - 1
  if (Math.abs(off) <= ODD) return null
  const than =
    others.length === 0
      ? 'the general model'
      : others.length === 1
        ? 'your other packing'
        : 'your other packings'
  return `${percent(off)} ${off > 0 ? 'more' : 'less'} than by ${than}. Look whether just these things were along and the litres of the pack are right. It counts as it is.`
}

const percent = (share: number) => `${Math.round(Math.abs(share) * 100)}\u00a0%`

/** "8 % more than reckoned". */
export function effectText(factor: number): string {
  if (Math.round(Math.abs(factor - 1) * 100) === 0) return 'as much as reckoned'
  return `${percent(factor - 1)} ${factor > 1 ? 'more' : 'less'} than reckoned`
}
