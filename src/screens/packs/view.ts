// In which order packs stand and which of them: kept while the app is open, no part of any trip.

import { signal } from '@preact/signals'
import { type Reading, readQuantity } from '../../components/fields'
import { type DraftPack, LIMITS } from '../../plan'
import type { Formats } from '../../report'
import { type Comparison, NO_FILTERS, type PackFilters, priceText, rankOf } from '../../report/compare-packs'
import type { Quantity, System } from '../../units'

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

/** The filters that are a quantity, each with the text it is typed as. */
export const BOUNDS = {
  mostPrice: { label: 'Price up to', short: 'price up to', kind: 'money', limit: LIMITS.pack.price },
  mostKg: { label: 'Pack mass up to', short: 'mass up to', kind: 'mass', limit: LIMITS.setup.massKg },
  leastLitres: {
    label: 'Main body from',
    short: 'main body from',
    kind: 'volume',
    limit: LIMITS.pack.bodyLitres,
  },
  mostLitres: {
    label: 'Main body up to',
    short: 'main body up to',
    kind: 'volume',
    limit: LIMITS.pack.bodyLitres,
  },
} as const satisfies Partial<Record<keyof PackFilters, { kind: Quantity } & Record<string, unknown>>>
export type Bound = keyof typeof BOUNDS
export const BOUND_NAMES = Object.keys(BOUNDS) as Bound[]

export interface View extends Omit<PackFilters, Bound> {
  order: Order
  /** Sorted across the answers; else those of one answer stand together, the best first. */
  mixed: boolean
  /** As typed. */
  texts: Readonly<Record<Bound, string>>
}

const { mostPrice: _p, mostKg: _k, leastLitres: _l, mostLitres: _m, ...NONE } = NO_FILTERS

export const AS_LISTED: View = {
  ...NONE,
  order: 'listed',
  mixed: false,
  texts: { mostPrice: '', mostKg: '', leastLitres: '', mostLitres: '' },
}

// Until somebody asks otherwise the best stand first; apart from a trip, where none is the best, they stand as listed.
export const view = signal<View>({ ...AS_LISTED, order: 'best' })

export function look(part: Partial<View>): void {
  view.value = { ...view.peek(), ...part }
}

export type Readings = Readonly<Record<Bound, Reading>>

/** What is read of the texts. */
export function readingsOf({ texts }: View, system: System): Readings {
  const read = (name: Bound) => {
    const { kind, label, limit } = BOUNDS[name]
    return [name, readQuantity(texts[name], { kind, label, limit, system, fine: name === 'mostKg' })]
  }
  return Object.fromEntries(BOUND_NAMES.map(read))
}

/** A text that cannot be read leaves nothing out. */
export function filtersOf(
  { texts: _texts, order: _order, mixed: _mixed, ...rest }: View,
  readings: Readings,
): PackFilters {
  const value = (name: Bound) => {
    const reading = readings[name]
    return [name, 'value' in reading ? (reading.value ?? null) : null]
  }
  return { ...NO_FILTERS, ...rest, ...Object.fromEntries(BOUND_NAMES.map(value)) }
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
 * set aside last. `answerOf`: where those of one answer are to stand together, the best first.
 */
export function inOrder(
  packs: readonly DraftPack[],
  order: Order,
  comparisonsOf: (id: string) => readonly Comparison[],
  answerOf: (id: string) => PackAnswer | null = () => null,
): DraftPack[] {
  const isAside = (pack: DraftPack) => Number(pack.aside !== undefined)
  if (order === 'listed') return packs.toSorted((a, b) => isAside(a) - isAside(b))
  const key = KEYS[order]
  const least = (pack: DraftPack) =>
    comparisonsOf(pack.id).reduce((low, c) => Math.min(low, key(c) ?? low), Number.POSITIVE_INFINITY)
  return packs
    .map(pack => ({ pack, aside: isAside(pack), rank: rankOf(answerOf(pack.id)), at: least(pack) }))
    .sort((a, b) => a.aside - b.aside || a.rank - b.rank || (a.at === b.at ? 0 : a.at - b.at))
    .map(({ pack }) => pack)
}

/** A price for something, to the hundredth. */
export const money = (value: number, currency: string | undefined): string =>
  priceText(Math.round(value * 100) / 100, currency ?? null)

/** Of the figure that packs stand in order by, what one of them has; null: not known. Its litres where there is none. */
export function orderFigure(
  order: Order,
  { pack, comparisons }: { pack: DraftPack; comparisons: readonly Comparison[] },
  formats: Formats,
): string | null {
  const { bodyLitres, price, currency } = pack
  const least = (values: readonly (number | null | undefined)[]) => {
    const known = values.filter(value => value !== null && value !== undefined)
    return known.length > 0 ? Math.min(...known) : null
  }
  const shown = (value: number | null, text: (value: number) => string) =>
    value === null ? null : text(value)
  switch (order) {
    case 'listed':
    case 'best':
      return shown(bodyLitres ?? null, formats.litres)
    case 'mass':
      return shown(
        least((comparisons.length > 0 ? comparisons : pack.setups).map(({ massKg }) => massKg)),
        formats.gear,
      )
    case 'price':
      return shown(price ?? null, value => money(value, currency))
  }
  const key = KEYS[order]
  return shown(least(comparisons.map(key)), value => {
    switch (order) {
      case 'carried':
        return formats.kg(value)
      case 'margin':
        return value <= 0 ? `${formats.kg(-value)} to spare` : `${formats.kg(value)} over`
      case 'litre':
      case 'total-litre':
        return formats.gramsPerLitre(value)
      case 'rated':
        return formats.gramsPerKg(value)
      case 'price-litre':
      case 'price-rated':
        return money(value, currency)
      case 'own':
        return value.toLocaleString('en', { maximumSignificantDigits: 3 })
    }
  })
}
