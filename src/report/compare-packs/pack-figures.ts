// All figures that packs are compared by, a row each: the columns of their table and the axes of their chart.

import type { Pack, Setup } from '../../plan'
import type { SetupReckoning } from '../../reckon'
import { bareUnitOf, capital, inUnit, type Quantity, type System, type Unit } from '../../units'
import { bareNumber, type Formats, marginText } from '../formats'
import { type Figure as Asks, leastText, type Missing } from '../missing'
import { type Comparison, priceText } from './compare'
import { OWN_LIMITS } from './own-figures'

/** What a comparison holds is read from there. */
type Compared = keyof typeof OWN_LIMITS | 'spareKg' | 'bearsKg' | 'massKg' | 'carriedKg' | 'price' | 'measure'

/** A set-up with all that is known of it. */
export interface KnownSetup {
  pack: Pack
  setup: Setup
  judged: SetupReckoning
  compared: Comparison
  /** Nothing is taken: there is nothing it could have to spare. */
  noGear: boolean
}

interface FigureRow {
  /** Over a column; after the unit in one of ratios. */
  head: string
  /** Where the head alone does not say of what. */
  headOf?: string
  name: string
  kind: Quantity | 'own'
  of: Compared | ((known: KnownSetup) => number | null)
  /** More is better, and comes first. */
  isMore?: true
  /** Known to be at most this while items lack that figure. */
  atMost?: Asks
  /** Known to be at least this while items lack that figure. */
  atLeast?: Asks
  /** What the hiker told; the others are calculated. */
  isTyped?: true
}

export type FigureName =
  | 'body'
  | 'spare-litres'
  | 'all-litres'
  | 'rated'
  | 'spare-kg'
  | 'bears'
  | 'mass'
  | 'carried'
  | 'litre'
  | 'all-litre'
  | 'rated-kg'
  | 'price'
  | 'price-litre'
  | 'price-rated'
  | 'brim'
  | 'own'

const ratio = (name: keyof typeof OWN_LIMITS, head: string): FigureRow => ({
  head,
  name: capital(OWN_LIMITS[name].label),
  kind: OWN_LIMITS[name].kind,
  of: name,
})

export const PACK_FIGURES: Readonly<Record<FigureName, FigureRow>> = {
  body: { head: 'Body', name: 'Main body', kind: 'volume', of: ({ pack }) => pack.bodyLitres, isTyped: true },
  'spare-litres': {
    head: 'To spare',
    headOf: 'litres',
    name: 'Litres to spare',
    kind: 'volume',
    of: ({ judged, noGear }) => (noGear ? null : judged.bodyMarginLitres),
    isMore: true,
    atMost: 'litres',
  },
  'all-litres': {
    head: 'All',
    headOf: 'litres',
    name: 'Litres with pockets',
    kind: 'volume',
    of: ({ pack }) => (pack.outsideLitres === null ? null : pack.bodyLitres + pack.outsideLitres),
    isMore: true,
  },
  rated: {
    head: 'Rated',
    name: 'Rated load',
    kind: 'mass',
    of: ({ setup }) => setup.ratedKg,
    isMore: true,
    isTyped: true,
  },
  'spare-kg': {
    head: 'To spare',
    headOf: 'load',
    name: 'Load to spare',
    kind: 'mass',
    of: 'spareKg',
    isMore: true,
    atMost: 'mass',
  },
  bears: {
    head: 'Carries',
    name: 'Load it can carry',
    kind: 'mass',
    of: 'bearsKg',
    isMore: true,
  },
  mass: { head: 'Mass', name: 'Pack mass', kind: 'mass', of: 'massKg', isTyped: true },
  carried: {
    head: 'Carried',
    name: 'Carried mass',
    kind: 'mass',
    of: 'carriedKg',
    atLeast: 'mass',
  },
  litre: ratio('gramsPerLitre', ''),
  'all-litre': ratio('gramsPerTotalLitre', ' of all'),
  'rated-kg': ratio('gramsPerRatedKg', ''),
  price: {
    head: 'Price',
    name: 'Price',
    kind: 'money',
    of: 'price',
    isTyped: true,
  },
  'price-litre': ratio('pricePerLitre', 'Price per L'),
  'price-rated': ratio('pricePerRatedKg', 'Price per load'),
  brim: {
    head: 'Full',
    name: 'Load when full',
    kind: 'mass',
    of: ({ judged, compared, noGear }) => (noGear ? compared.brimLoadKg : judged.brimLoadKg),
  },
  own: { head: 'Yours', name: 'Your own figure', kind: 'own', of: 'measure' },
}

export const FIGURE_NAMES = Object.keys(PACK_FIGURES) as FigureName[]

/** A figure of a set-up; null: not known. */
export function figureOf(name: FigureName, known: KnownSetup): number | null {
  const { of } = PACK_FIGURES[name]
  return typeof of === 'string' ? known.compared[of] : of(known)
}

/** A figure of those that a comparison holds; null: not known, or not among them. */
export function comparedFigure(name: FigureName, compared: Comparison): number | null {
  const { of } = PACK_FIGURES[name]
  return typeof of === 'string' ? compared[of] : null
}

/** The columns of the table until others are chosen. */
const USUAL_COLUMNS: readonly FigureName[] = [
  'body',
  'spare-litres',
  'rated',
  'spare-kg',
  'mass',
  'litre',
  'price',
  'own',
]

/** The columns that were chosen, in the order of the table; what is not known as a column is passed over. */
export const columnsIn = (chosen: readonly string[] | undefined): FigureName[] =>
  chosen ? FIGURE_NAMES.filter(name => chosen.includes(name)) : [...USUAL_COLUMNS]

/** Masses of packs are told finer than loads. */
const isFine = (name: FigureName) => name === 'mass'

/** The unit of a figure along an axis; empty where it has none. */
export function axisUnit(name: FigureName, system: System): Unit {
  const { kind } = PACK_FIGURES[name]
  if (kind === 'own') return ''
  return kind === 'volume' ? 'L' : bareUnitOf(kind, system, isFine(name))
}

/** A figure in the unit of its axis. */
export function onAxis(name: FigureName, value: number, system: System): number {
  const { kind } = PACK_FIGURES[name]
  return kind === 'own' ? value : inUnit(kind, value, axisUnit(name, system))
}

/** What stands over the column of a figure. */
export function headText(name: FigureName, system: System): string {
  const { head, kind } = PACK_FIGURES[name]
  const isRatio = kind === 'gramsPerLitre' || kind === 'gramsPerKg'
  return isRatio ? `${axisUnit(name, system).replace('/', ' per ')}${head}` : head
}

/** A figure in words. `isBare`: its unit is told over the column. */
export function figureText(
  name: FigureName,
  value: number | null,
  { formats, currency, isBare = false }: { formats: Formats; currency: string | null; isBare?: boolean },
): string {
  if (value === null) return '–'
  const { kind } = PACK_FIGURES[name]
  switch (kind) {
    case 'volume':
      return formats.litres(value).replace(/[.,]0(?=\D*$)/, '')
    case 'mass':
      return isFine(name) ? formats.gear(value) : formats.kg(value)
    case 'money':
      return priceText(Math.round(value * 100) / 100, currency)
    case 'gramsPerLitre':
    case 'gramsPerKg': {
      const text = kind === 'gramsPerLitre' ? formats.gramsPerLitre(value) : formats.gramsPerKg(value)
      return isBare ? bareNumber(text) : text
    }
    default:
      return value.toLocaleString('en', { maximumSignificantDigits: 3 })
  }
}

/** A figure by itself, with what is missing counted in: "at most 2.4 kg to spare", "at least 7.5 kg over". */
export function toldFigure(
  name: FigureName,
  value: number,
  { missing, ...shown }: { missing: Missing; formats: Formats; currency: string | null },
): string {
  if (name !== 'spare-kg') {
    const { atLeast } = PACK_FIGURES[name]
    const text = figureText(name, value, shown)
    return atLeast ? leastText(missing, atLeast, text) : text
  }
  const by = marginText(value, shown.formats.kg)
  if (value < 0) return `${leastText(missing, 'mass', by)} over`
  return `${missing.mass.length > 0 ? 'at most ' : ''}${by} to spare`
}
