// In which order packs stand and which of them: kept while the app is open, no part of any trip.

import { signal } from '@preact/signals'
import { type Reading, readQuantity } from '../../components/fields'
import { type DraftPack, LIMITS } from '../../plan'
import type { Formats, Missing } from '../../report'
import {
  type Comparison,
  comparedFigure,
  type FigureName,
  figureText,
  NO_FILTERS,
  PACK_FIGURES,
  type PackFilters,
  rankOf,
  toldFigure,
} from '../../report/compare-packs'
import type { Quantity, System } from '../../units'

const FIGURE_ORDERS = [
  'carried',
  'mass',
  'price',
  'spare-kg',
  'litre',
  'all-litre',
  'rated-kg',
  'price-litre',
  'price-rated',
  'own',
] as const satisfies FigureName[]
type FigureOrder = (typeof FIGURE_ORDERS)[number]

export const ORDERS: Readonly<Record<'listed' | 'best' | FigureOrder, string>> = {
  listed: 'As listed',
  best: 'Best first',
  ...(Object.fromEntries(FIGURE_ORDERS.map(name => [name, PACK_FIGURES[name].name])) as Record<
    FigureOrder,
    string
  >),
}
export type Order = keyof typeof ORDERS

/** Apart from a trip nothing has these. */
const OF_A_TRIP: readonly Order[] = ['best', 'carried', 'spare-kg']
export const isOfATrip = (order: Order): boolean => OF_A_TRIP.includes(order)

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
const keyOf =
  (order: Exclude<Order, 'listed'>) =>
  (c: Comparison): number | null => {
    // Standing decides; among equals the lighter load to carry.
    if (order === 'best') return c.standing * 1e6 + (c.carriedKg ?? c.massKg)
    const value = comparedFigure(order, c)
    return value !== null && PACK_FIGURES[order].isMore ? -value : value
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
  const key = keyOf(order)
  const least = (pack: DraftPack) =>
    comparisonsOf(pack.id).reduce((low, c) => Math.min(low, key(c) ?? low), Number.POSITIVE_INFINITY)
  return packs
    .map(pack => ({ pack, aside: isAside(pack), rank: rankOf(answerOf(pack.id)), at: least(pack) }))
    .sort((a, b) => a.aside - b.aside || a.rank - b.rank || (a.at === b.at ? 0 : a.at - b.at))
    .map(({ pack }) => pack)
}

/** Of the figure that packs stand in order by, what one of them has; null: not known. Its litres where there is none. */
export function orderFigure(
  order: Order,
  { pack, comparisons }: { pack: DraftPack; comparisons: readonly Comparison[] },
  { formats, missing }: { formats: Formats; missing: Missing },
): string | null {
  const currency = pack.currency ?? null
  if (order === 'listed' || order === 'best')
    return pack.bodyLitres === undefined ? null : figureText('body', pack.bodyLitres, { formats, currency })
  const known = comparisons.flatMap(each => comparedFigure(order, each) ?? [])
  const values = known.length > 0 ? known : typedOf(order, pack)
  if (values.length === 0) return null
  const best = PACK_FIGURES[order].isMore ? Math.max(...values) : Math.min(...values)
  return toldFigure(order, best, { missing, formats, currency })
}

/** What is known of a pack that is not judged. */
function typedOf(order: Order, { price, setups }: DraftPack): number[] {
  if (order === 'price') return [price ?? []].flat()
  return order === 'mass' ? setups.flatMap(({ massKg }) => massKg ?? []) : []
}
