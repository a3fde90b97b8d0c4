// Moments and stops in words.

import type { Moment, Place, Reckoning, Shares } from '../reckon'

/** Where a place stands among the moments; 0 where it does not. */
export function momentIndex(moments: Moment[], { stop, phase }: Place): number {
  return Math.max(
    0,
    moments.findIndex(m => m.stop === stop && m.phase === phase),
  )
}

export const momentAt = ({ moments }: Reckoning, place: Place): Moment =>
  moments[momentIndex(moments, place)]!

/** "when you leave Larch Spring, day 2". */
export function placeText(place: Place, moments: Moment[]): string {
  const way = place.phase === 'depart' ? 'leave' : 'reach'
  return `when you ${way} ${place.name}, day ${moments[momentIndex(moments, place)]?.day ?? 1}`
}

/** The parts of a load as the pictures and reasons name them. */
export const SHARES = [
  ['kept', 'gear'],
  ['daily', 'food'],
  ['nightly', 'fuel'],
  ['spread', 'used-up items'],
  ['water', 'water'],
  ['rubbish', 'rubbish'],
] as const

/** Shares of a load or of a main body by name, largest first, nothing that is nothing. */
export function sharesByName(shares: Shares): { name: string; amount: number }[] {
  return SHARES.map(([share, name]) => ({ name, amount: shares[share] }))
    .filter(part => part.amount > 0)
    .sort((a, b) => b.amount - a.amount)
}

/** The first and the last moment of a day's walk; null on a rest day. */
export function walkOf({ moments }: Reckoning, day: number): { sets: Moment; ends: Moment } | null {
  const mine = moments.filter(m => m.day === day)
  const sets = mine.find(m => m.phase === 'depart')
  const ends = mine.at(-1)
  return sets && ends ? { sets, ends } : null
}
