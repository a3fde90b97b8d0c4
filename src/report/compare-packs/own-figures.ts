// What the hiker goes by among packs: figures at or under which a pack counts as good, told in words, and one figure of
// their own.

import type { OwnFigures } from '../../plan/shelf'
import { MEASURE_PARTS, type Measure, type MeasurePart, MOST_POWER } from '../../reckon'
import type { Quantity } from '../../units'
import type { Comparison } from './compare'

type Ratio = keyof Pick<
  Comparison,
  'gramsPerLitre' | 'gramsPerTotalLitre' | 'gramsPerRatedKg' | 'pricePerLitre' | 'pricePerRatedKg'
>

interface Row {
  /** What a pack is at or under the figure. */
  word: string
  /** The figure itself. */
  label: string
  kind: Quantity
}

export const OWN_LIMITS: Readonly<Record<Ratio, Row>> = {
  gramsPerLitre: { word: 'light for its litres', label: 'mass for each litre', kind: 'gramsPerLitre' },
  gramsPerTotalLitre: {
    word: 'light for its litres with pockets',
    label: 'mass for each litre with pockets',
    kind: 'gramsPerLitre',
  },
  gramsPerRatedKg: { word: 'light for what it carries', label: 'mass for each kg rated', kind: 'gramsPerKg' },
  pricePerLitre: { word: 'cheap for its litres', label: 'price for each litre', kind: 'money' },
  pricePerRatedKg: { word: 'cheap for what it carries', label: 'price for each kg rated', kind: 'money' },
}
export const OWN_LIMIT_NAMES = Object.keys(OWN_LIMITS) as Ratio[]

/** The words that a pack has earned by the best of these set-ups; none for a figure that is not known. */
export function ownWords(set: readonly Comparison[], { under = {} }: OwnFigures): string[] {
  return OWN_LIMIT_NAMES.flatMap(name => {
    const limit = under[name]
    if (limit === undefined) return []
    return set.some(each => (each[name] ?? Number.POSITIVE_INFINITY) <= limit) ? OWN_LIMITS[name].word : []
  })
}

export const MEASURE_WORDS: Readonly<Record<MeasurePart, string>> = {
  massG: 'Mass',
  bodyLitres: 'Main body litres',
  totalLitres: 'Litres with pockets',
  ratedKg: 'Rated load',
  denier: 'Denier',
  price: 'Price',
}

export const MEASURE_NAMES = Object.keys(MEASURE_WORDS) as MeasurePart[]

export const POWERS = { 2: '× twice', 1: '×', 0: 'not in it', '-1': '÷', '-2': '÷ twice' } as const

/** The hiker's figure as the engine takes it; null while nothing is in it. */
export function measureIn({ measure }: OwnFigures): Measure | null {
  const powers = MEASURE_PARTS.flatMap(part => {
    const power = measure?.powers[part] ?? 0
    return Number.isInteger(power) && power !== 0 && Math.abs(power) <= MOST_POWER
      ? [[part, power] as const]
      : []
  })
  return powers.length > 0 ? Object.fromEntries(powers) : null
}

/** "Mass × Price ÷ Litres": the figure in words; empty while nothing is in it. */
export function measureWords(figures: OwnFigures): string {
  const measure = measureIn(figures)
  if (!measure) return ''
  const times = (isUp: boolean) =>
    MEASURE_PARTS.flatMap(part => {
      const power = measure[part] ?? 0
      return power > 0 === isUp ? Array<string>(Math.abs(power)).fill(MEASURE_WORDS[part].toLowerCase()) : []
    })
  const [over, under] = [times(true), times(false)]
  return [over.join(' × ') || '1', ...under].join(' ÷ ')
}
