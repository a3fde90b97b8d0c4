// Drinking water for an hour of walking, from heat and how hard the walking is, with its caps.
// From 25.6 °C WBGT up the US Army table steps by category; below, planning rates of ours run in straight
// lines between anchors. What a thirsty person and full sun may ask for on top is the table's own note.
// Sources: tb-med-507 (public copies read), montain-1999 (watts from memory).

import { firstOutside, found, type Outcome, type Range } from './outcome'

export type WorkClass = 'easy' | 'moderate' | 'hard'

type RateByClass = Readonly<Record<WorkClass, number>>

/** US liquid quart, exact. */
export const litresPerQuart = 0.946352946

/** 1.5 quarts; the table's own limit, rounded as the model of this app states it. */
export const maxLitresPerHour = 1.42

/** 12 quarts; the table's own limit, rounded likewise. */
export const maxLitresPerDay = 11.36

/** By how much the table's note lets one person differ from another, and full sun from none, each: 1/4 quart. */
export const thirstyLitresPerHour = litresPerQuart / 4

/** The power each class stands for; from memory of montain-1999, not re-read. */
export const typicalWatts: RateByClass = { easy: 250, moderate: 425, hard: 600 }

/** Midpoints of the typical powers, rounded down: easy below the first, hard from the second on. */
export const workClassLimits = { moderateFromW: 337, hardFromW: 512 } as const

const quarts = (easy: number, moderate: number, hard: number): RateByClass => ({
  easy: easy * litresPerQuart,
  moderate: moderate * litresPerQuart,
  hard: hard * litresPerQuart,
})

/** TB MED 507 categories by the lower end of their WBGT, as printed in °C to one decimal. */
export const heatCategories: readonly { category: number; fromWbgtC: number; litresPerHour: RateByClass }[] =
  [
    { category: 1, fromWbgtC: 25.6, litresPerHour: quarts(0.5, 0.75, 0.75) },
    { category: 2, fromWbgtC: 27.8, litresPerHour: quarts(0.5, 0.75, 1) },
    { category: 3, fromWbgtC: 29.4, litresPerHour: quarts(0.75, 0.75, 1) },
    { category: 4, fromWbgtC: 31.1, litresPerHour: quarts(0.75, 0.75, 1) },
    { category: 5, fromWbgtC: 32.2, litresPerHour: quarts(1, 1, 1) },
  ]

/** WBGT from which the note's amounts begin to count, and from which in full: where the table begins. */
export const thirstyRamp = { fromWbgtC: 15, fullWbgtC: heatCategories[0]!.fromWbgtC } as const

/** Planning rates of ours below the table; the last anchor is the table's first category. */
export const planningAnchors: readonly { wbgtC: number; litresPerHour: RateByClass }[] = [
  { wbgtC: 5, litresPerHour: { easy: 0.2, moderate: 0.3, hard: 0.45 } },
  { wbgtC: 15, litresPerHour: { easy: 0.3, moderate: 0.45, hard: 0.6 } },
  { wbgtC: 25.6, litresPerHour: heatCategories[0]!.litresPerHour },
]

/** As wide as any air temperature and humidity can make them, and any leg's power. */
export const waterRateRanges = {
  wbgtC: { min: -40, max: 120, unit: '°C', source: 'our-judgement' },
  watts: { min: 0, max: 100_000_000, unit: 'W', source: 'our-judgement' },
} as const satisfies Record<string, Range>

export interface WaterRate {
  litresPerHour: number
  workClass: WorkClass
  /** The rate would have passed the hourly cap and was set to it. */
  capped: boolean
}

function workClassOf(watts: number): WorkClass {
  if (watts < workClassLimits.moderateFromW) return 'easy'
  return watts < workClassLimits.hardFromW ? 'moderate' : 'hard'
}

function tableRate(wbgtC: number, work: WorkClass): number | undefined {
  return heatCategories.findLast(({ fromWbgtC }) => wbgtC >= fromWbgtC)?.litresPerHour[work]
}

function planningRate(wbgtC: number, work: WorkClass): number {
  const above = planningAnchors.findIndex(anchor => wbgtC <= anchor.wbgtC)
  const high = planningAnchors[above]!
  const low = planningAnchors[Math.max(above - 1, 0)]!
  if (high === low) return low.litresPerHour[work]
  const share = (wbgtC - low.wbgtC) / (high.wbgtC - low.wbgtC)
  return low.litresPerHour[work] + share * (high.litresPerHour[work] - low.litresPerHour[work])
}

const hourlyRanges = {
  litresPerHour: { min: 0, max: 100, unit: 'L/h', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * An hourly rate held to what a body can take up in an hour.
 *
 * Source: tb-med-507: no more than 1.5 quarts an hour. Ignores: body size.
 *
 * @example
 * cappedLitresPerHour({ litresPerHour: 2 }) // { litresPerHour: 1.42, capped: true }
 */
export function cappedLitresPerHour(rate: { litresPerHour: number }): Outcome<Omit<WaterRate, 'workClass'>> {
  const refusal = firstOutside(hourlyRanges, rate)
  if (refusal) return refusal
  const capped = rate.litresPerHour > maxLitresPerHour
  return found({ litresPerHour: capped ? maxLitresPerHour : rate.litresPerHour, capped })
}

/**
 * Litres to carry for an hour of walking.
 *
 * Source: tb-med-507 from 25.6 °C WBGT up, a step at each category's lower end; below it our-judgement,
 * linear between 5, 15 and 25.6 °C and constant under 5 °C. Work class by watts: montain-1999.
 * Symbols: WBGT = wbgtC; easy, moderate, hard = the table's columns.
 * Ignores: body size, acclimatisation, rest minutes; how people differ and the sun: see `thirstyRate`.
 * It is a need to carry, never an order to drink. The table itself stays under the hourly cap.
 *
 * @example
 * waterRate({ wbgtC: 20, watts: 300 }) // { litresPerHour: 0.3816870, workClass: 'easy', capped: false }
 * waterRate({ wbgtC: 33, watts: 600 }) // { litresPerHour: 0.946352946, workClass: 'hard', capped: false }
 */
export function waterRate(walk: { wbgtC: number; watts: number }): Outcome<WaterRate> {
  const refusal = firstOutside(waterRateRanges, walk)
  if (refusal) return refusal
  const workClass = workClassOf(walk.watts)
  const litresPerHour = tableRate(walk.wbgtC, workClass) ?? planningRate(walk.wbgtC, workClass)
  const rate = cappedLitresPerHour({ litresPerHour })
  return rate.ok ? found({ ...rate.value, workClass }) : rate
}

export interface ThirstyRate extends WaterRate {
  /** Of the rate, before the cap: what a thirsty person, and full sun, ask for on top. */
  addedLitresPerHour: number
  /** The rate of the table, or of the planning rates, without it. */
  tableLitresPerHour: number
}

/**
 * Litres to carry for an hour of walking, for the thirsty end of people.
 *
 * Source: tb-med-507, the table's note: individual needs vary by ± 1/4 quart an hour, full sun or full shade by as
 * much again. Our judgement: it rises linearly from nothing at 15 °C WBGT to all of it where the table begins, 25.6 °C.
 * Symbols and ranges: as `waterRate`. Ignores: shade, which would take off as much.
 *
 * @example
 * thirstyRate({ wbgtC: 33, watts: 600, fullSun: true }) // { litresPerHour: 1.41952942, workClass: 'hard', capped: false, addedLitresPerHour: 0.473176473, tableLitresPerHour: 0.946352946 }
 */
export function thirstyRate({
  fullSun,
  ...walk
}: {
  wbgtC: number
  watts: number
  fullSun: boolean
}): Outcome<ThirstyRate> {
  const table = waterRate(walk)
  if (!table.ok) return table
  const tableLitresPerHour = table.value.litresPerHour
  const { fromWbgtC, fullWbgtC } = thirstyRamp
  const share = Math.min(Math.max((walk.wbgtC - fromWbgtC) / (fullWbgtC - fromWbgtC), 0), 1)
  const addedLitresPerHour = share * thirstyLitresPerHour * (fullSun ? 2 : 1)
  const rate = cappedLitresPerHour({ litresPerHour: tableLitresPerHour + addedLitresPerHour })
  return rate.ok ? found({ ...table.value, ...rate.value, addedLitresPerHour, tableLitresPerHour }) : rate
}
