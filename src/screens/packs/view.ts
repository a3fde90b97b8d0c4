// In which order packs stand and which of them: kept while the app is open, no part of any trip.

import { signal } from '@preact/signals'
import type { DraftPack, DraftSetup } from '../../plan'
import { ANSWERS, type Formats } from '../../report'
import { type Comparison, priceText } from '../../report/compare-packs'

export const ORDERS = {
  listed: 'As listed',
  best: 'Best first',
  carried: 'Carried mass',
  mass: 'Pack mass',
  price: 'Price',
  margin: 'Margin to its rating',
  litre: 'Mass for each litre',
  'total-litre': 'Mass for each litre with pockets',
  rated: 'Mass for each kg rated',
  'price-litre': 'Price for each litre',
  'price-rated': 'Price for each kg rated',
  own: 'Your own figure',
} as const
export type Order = keyof typeof ORDERS

export type PackAnswer = Comparison['answer']

/** Whose packs are shown. */
export const OWN = {
  any: 'All',
  owned: 'Mine',
  wanted: 'Wanted',
  starred: 'Starred',
  aside: 'Set aside',
} as const

export interface View {
  order: Order
  /** Only packs with this answer. */
  answer: PackAnswer | null
  frame: 'any' | 'framed' | 'frameless'
  sealed: boolean
  /** Only those of which the hiker says so. */
  own: keyof typeof OWN
  tag: string | null
  /** As typed. */
  priceText: string
  massText: string
}

export const AS_LISTED: View = {
  order: 'listed',
  answer: null,
  frame: 'any',
  sealed: false,
  own: 'any',
  tag: null,
  priceText: '',
  massText: '',
}

export const view = signal(AS_LISTED)

/** What is read of the filter's texts. */
export interface Bounds {
  price: number | undefined
  massKg: number | undefined
}

/** Whether a pack is among those asked for; what is asked about and not known leaves it out. */
export function passes(
  pack: DraftPack,
  { frame, sealed, own, tag }: View,
  { price, massKg }: Bounds,
): boolean {
  if (sealed && !pack.sealed) return false
  if (!isOwn(pack, own) || (tag !== null && !pack.tags?.includes(tag))) return false
  if (price !== undefined && !(pack.price !== undefined && pack.price <= price)) return false
  const fits = (setup: DraftSetup) =>
    (frame === 'any' || setup.frame === frame) &&
    (massKg === undefined || (setup.massKg !== undefined && setup.massKg <= massKg))
  return pack.setups.some(fits)
}

function isOwn(pack: DraftPack, own: View['own']): boolean {
  if (own === 'any') return true
  if (own === 'starred') return pack.starred === true
  return own === 'aside' ? pack.aside !== undefined : pack.has === own
}

/** Less comes first; what is not known comes last. */
const KEYS: Record<Exclude<Order, 'listed'>, (c: Comparison) => number | null> = {
  // Standing decides; among equals the lighter load to carry.
  best: c => c.standing * 1e6 + c.carriedKg,
  carried: c => c.carriedKg,
  mass: c => c.massKg,
  price: c => c.price,
  margin: c => (c.spareKg === null ? null : -c.spareKg),
  litre: c => c.gramsPerLitre,
  'total-litre': c => c.gramsPerTotalLitre,
  rated: c => c.gramsPerRatedKg,
  'price-litre': c => c.pricePerLitre,
  'price-rated': c => c.pricePerRatedKg,
  own: c => c.measure,
}

/**
 * The packs in order, each by the best of its set-ups; equals stay as listed, packs not judged come after them, and those
 * set aside last.
 */
export function inOrder(
  packs: DraftPack[],
  order: Order,
  comparisonsOf: (id: string) => Comparison[],
): DraftPack[] {
  const isAside = (pack: DraftPack) => Number(pack.aside !== undefined)
  if (order === 'listed') return packs.toSorted((a, b) => isAside(a) - isAside(b))
  const key = KEYS[order]
  const least = (pack: DraftPack) =>
    Math.min(...comparisonsOf(pack.id).map(c => key(c) ?? Number.POSITIVE_INFINITY), Number.POSITIVE_INFINITY)
  return packs
    .map(pack => ({ pack, at: least(pack) }))
    .sort((a, b) => isAside(a.pack) - isAside(b.pack) || (a.at === b.at ? 0 : a.at - b.at))
    .map(({ pack }) => pack)
}

const BEST_FIRST = Object.keys(ANSWERS) as PackAnswer[]

/** The answer of a pack is the best of its set-ups'; null: none of them is judged. */
export function answerOf(comparisons: readonly Comparison[]): PackAnswer | null {
  return BEST_FIRST.find(answer => comparisons.some(each => each.answer === answer)) ?? null
}

/** The set-ups that the answer of their pack is of: a figure told or sorted by beside it is one of theirs. */
export function answering(comparisons: Comparison[]): Comparison[] {
  const answer = answerOf(comparisons)
  return comparisons.filter(each => each.answer === answer)
}

/** A price for something, to the hundredth. */
export const money = (value: number, currency: string | undefined): string =>
  priceText(Math.round(value * 100) / 100, currency ?? null)

/** Of the figure that packs stand in order by, its words for one of them; null where the row has it anyway. */
export function orderFigure(
  order: Order,
  comparisons: readonly Comparison[],
  { formats, currency }: { formats: Formats; currency: string | undefined },
): string | null {
  if (order === 'listed' || order === 'best' || order === 'mass') return null
  const key = KEYS[order]
  const known = comparisons.flatMap(c => key(c) ?? [])
  if (known.length === 0) return comparisons.length > 0 ? 'not known' : null
  const least = Math.min(...known)
  switch (order) {
    case 'carried':
      return `${formats.kg(least)} carried`
    case 'price':
      return money(least, currency)
    case 'margin':
      return least <= 0 ? `${formats.kg(-least)} to spare` : `${formats.kg(least)} over`
    case 'litre':
      return formats.gramsPerLitre(least)
    case 'total-litre':
      return `${formats.gramsPerLitre(least)} with pockets`
    case 'rated':
      return `${formats.gramsPerKg(least)} rated`
    case 'price-litre':
      return `${money(least, currency)} for each litre`
    case 'price-rated':
      return `${money(least, currency)} for each kg rated`
    case 'own':
      return least.toLocaleString('en', { maximumSignificantDigits: 3 })
  }
}
