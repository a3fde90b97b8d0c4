// Resting energy of a body, in kilocalories a day: Mifflin-St Jeor, Harris-Benedict revised, FAO/Schofield.
// Sex not given: the mean of both sexes' equations, a judgement of ours.
// Sources: mifflin-1990 (abstract read), roza-shizgal-1984, fao-2004 (third-party copies).

import { firstOutside, found, type Outcome, type Range } from './outcome'

export type Sex = 'female' | 'male'

export interface Body {
  massKg: number
  heightCm: number
  ageYears: number
  sex?: Sex | null | undefined
}

/** Mifflin studied 19 to 78 years; the wider ends are ours and keep every result above 0. */
export const bodyRanges = {
  massKg: { min: 10, max: 300, unit: 'kg', source: 'our-judgement' },
  heightCm: { min: 100, max: 250, unit: 'cm', source: 'our-judgement' },
  ageYears: { min: 14, max: 110, unit: 'years', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/** Ages of the people Mifflin measured. */
export const mifflinStudiedAges = {
  min: 19,
  max: 78,
  unit: 'years',
  source: 'mifflin-1990',
} as const satisfies Range

function bySex(sex: Body['sex'], of: Record<Sex, number>): number {
  return sex ? of[sex] : (of.female + of.male) / 2
}

/**
 * Resting kilocalories a day by Mifflin-St Jeor.
 *
 * Source: mifflin-1990, the rounded form: 10 kg + 6.25 cm − 5 y + 5 (male) or − 161 (female).
 * Symbols: kg = massKg, cm = heightCm, y = ageYears. Ignores: muscle share, cold, altitude, pregnancy.
 * Outside a range: `ok: false` with the field and its limit.
 *
 * @example
 * restingKcalPerDay({ massKg: 75, heightCm: 178, ageYears: 35, sex: 'male' }) // 1692.5
 * restingKcalPerDay({ massKg: 60, heightCm: 165, ageYears: 30 }) // 1403.25
 */
export function restingKcalPerDay({ sex, ...body }: Body): Outcome<number> {
  const refusal = firstOutside(bodyRanges, body)
  if (refusal) return refusal
  const { massKg, heightCm, ageYears } = body
  return found(10 * massKg + 6.25 * heightCm - 5 * ageYears + bySex(sex, { male: 5, female: -161 }))
}

/**
 * Resting kilocalories a day by the revised Harris-Benedict equations.
 *
 * Source: roza-shizgal-1984. Symbols and gaps: as `restingKcalPerDay`; 95 % of people within ±213 (men),
 * ±201 kcal (women).
 *
 * @example
 * harrisBenedictKcalPerDay({ massKg: 75, heightCm: 178, ageYears: 35, sex: 'male' }) // 1748.664
 */
export function harrisBenedictKcalPerDay({ sex, ...body }: Body): Outcome<number> {
  const refusal = firstOutside(bodyRanges, body)
  if (refusal) return refusal
  const { massKg, heightCm, ageYears } = body
  const male = 13.397 * massKg + 4.799 * heightCm - 5.677 * ageYears + 88.362
  const female = 9.247 * massKg + 3.098 * heightCm - 4.33 * ageYears + 447.593
  return found(bySex(sex, { male, female }))
}

/** kcal/day = perKg × kg + base, from the row's age on. The first row is from memory. */
const faoRows: readonly { fromYears: number; of: Record<Sex, readonly [perKg: number, base: number]> }[] = [
  { fromYears: 60, of: { male: [11.711, 587.7], female: [9.082, 658.5] } },
  { fromYears: 30, of: { male: [11.472, 873.1], female: [8.126, 845.6] } },
  { fromYears: 18, of: { male: [15.057, 692.2], female: [14.818, 486.6] } },
  { fromYears: 10, of: { male: [17.686, 658.2], female: [13.384, 692.6] } },
]

export const faoRanges = {
  massKg: bodyRanges.massKg,
  ageYears: { min: 10, max: 110, unit: 'years', source: 'fao-2004' },
} as const satisfies Record<string, Range>

/**
 * Basal kilocalories a day by Schofield's equations as FAO/WHO/UNU print them.
 *
 * Source: fao-2004, Table 5.2 (rows from 18 years: third-party copy; 10 to 18 years: from memory).
 * Symbols: kg = massKg; the row is chosen by ageYears, a birthday belonging to the older row.
 * Ignores: height, muscle share, cold, altitude.
 *
 * @example
 * faoKcalPerDay({ massKg: 55, ageYears: 25, sex: 'female' }) // 1301.59
 */
export function faoKcalPerDay({ sex, ...body }: Omit<Body, 'heightCm'>): Outcome<number> {
  const refusal = firstOutside(faoRanges, body)
  if (refusal) return refusal
  const row = faoRows.find(({ fromYears }) => body.ageYears >= fromYears)!
  const kcal = ([perKg, base]: readonly [number, number]) => perKg * body.massKg + base
  return found(bySex(sex, { male: kcal(row.of.male), female: kcal(row.of.female) }))
}

/** Watts in a kilocalorie a day, as the model of this app states it (exact: 4184 / 86400). */
export const wattsPerKcalPerDay = 0.0484259

const restingRateRanges = {
  kcalPerDay: { min: 0, max: 20_000, unit: 'kcal/day', source: 'our-judgement' },
  massKg: bodyRanges.massKg,
} as const satisfies Record<string, Range>

/**
 * Kilocalories a day as watts a kilogram of body mass.
 *
 * Source: our-judgement only for the ranges; the factor is 4184 J / 86400 s.
 * Symbols: RMR = kcalPerDay, W = massKg. Ignores nothing: a conversion.
 *
 * @example
 * restingWPerKg({ kcalPerDay: 1692.5, massKg: 75 }) // 1.092811
 */
export function restingWPerKg(rate: { kcalPerDay: number; massKg: number }): Outcome<number> {
  const refusal = firstOutside(restingRateRanges, rate)
  return refusal ?? found((rate.kcalPerDay * wattsPerKcalPerDay) / rate.massKg)
}
