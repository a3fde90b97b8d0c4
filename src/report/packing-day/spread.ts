// The difference of a scale reading shared out over guessed masses, each inside its range. Pure.

import type { Plan, Spread, TripLog } from '../../plan'
import { compositionAt, massHalfWidth, type Reckoning } from '../../reckon'

/** A guessed mass in the load: what it counts as, the ends of its range, each, and how many times it is aboard. */
export interface Guess {
  id: string
  kg: number
  /** As it was guessed, before any reading was shared out. */
  firstKg: number
  lowKg: number
  highKg: number
  times: number
}

/**
 * The guessed masses aboard at the start. The range of one over which a reading was shared out before is that of the
 * first guess, so that weighing again never leads out of it. `reckoning` must be what `reckon(plan)` gave.
 */
export function guessesAboard(plan: Plan, reckoning: Reckoning, spread: TripLog['spread'] = {}): Guess[] {
  return compositionAt(plan, reckoning, 0).flatMap(({ item, kg }): Guess[] => {
    // What fuel weighs follows from the water it boils.
    if (item.massFrom !== 'guess' || item.fuel || !(kg > 0)) return []
    const before = Object.hasOwn(spread, item.id) ? spread[item.id] : undefined
    const first = before?.toKg === item.massKg ? before.fromKg : item.massKg
    const half = massHalfWidth.guess * first
    return [
      {
        id: item.id,
        kg: item.massKg,
        firstKg: first,
        lowKg: Math.min(item.massKg, first - half),
        highKg: Math.max(item.massKg, first + half),
        times: kg / item.massKg,
      },
    ]
  })
}

/** By how much guesses may be more, or less, than they count as: all of them together, kg, never negative. */
export const roomOf = (guesses: readonly Guess[], way: 'more' | 'less'): number =>
  guesses.reduce((sum, guess) => sum + guess.times * stepOf(guess, way), 0)

const stepOf = ({ kg, lowKg, highKg }: Guess, way: 'more' | 'less') =>
  way === 'more' ? highKg - kg : kg - lowKg

export interface Shared {
  /** Each guess that changes. */
  masses: (Spread & { id: string })[]
  /** What no range takes, kg, signed as the difference. */
  restKg: number
}

/** Shares a difference out over the guesses by the room that each has: what they gain and the rest are the difference. */
export function spreadOver(guesses: readonly Guess[], differenceKg: number): Shared {
  const way = differenceKg > 0 ? 'more' : 'less'
  const size = Math.abs(differenceKg)
  const room = roomOf(guesses, way)
  if (size === 0 || room === 0) return { masses: [], restKg: differenceKg }
  const part = Math.min(1, size / room)
  const sign = Math.sign(differenceKg)
  const masses = guesses.flatMap(guess => {
    const kg = guess.kg + sign * part * stepOf(guess, way)
    const toKg = Math.min(guess.highKg, Math.max(guess.lowKg, kg))
    return toKg === guess.kg ? [] : [{ id: guess.id, fromKg: guess.firstKg, toKg }]
  })
  return { masses, restKg: size > room ? sign * (size - room) : 0 }
}
