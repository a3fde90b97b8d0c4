// Walking speed and time by slope: Tobler's hiking function and the Swiss hiking-path polynomial.
// Legs known by their totals are split into a climbing and a descending part of equal steepness.
// Sources: tobler-1993, swiss-hiking-time; both through third-party copies.

import { type LegTotals, legRanges, splitByTotals } from './leg-split'
import { firstOutside, found, type Outcome, type Range } from './outcome'

/** The rules name no end for slope; beyond 100 % nobody walks. Tobler's function was made for paths. */
export const slopeRanges = {
  slope: { min: -1, max: 1, unit: 'm up per m along', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/** 1 is the published speed; Tobler gives 0.6 off the path. */
export const paceFactorRanges = {
  paceFactor: { min: 0.1, max: 3, unit: 'times', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * Walking speed in km/h on a slope.
 *
 * Source: tobler-1993: 6 exp(−3.5 |i + 0.05|).
 * Symbols: i = slope (rise over run, signed); paceFactor is ours, a personal multiple of the speed.
 * Ignores: load, ground (Tobler's 0.6 off the path goes in paceFactor), breaks.
 *
 * @example
 * toblerKmh({ slope: 0 }) // 5.036742
 * toblerKmh({ slope: 0.1, paceFactor: 0.6 }) // 2.129599
 */
export function toblerKmh({
  slope,
  paceFactor = 1,
}: {
  slope: number
  paceFactor?: number
}): Outcome<number> {
  const refusal = firstOutside(slopeRanges, { slope }) ?? firstOutside(paceFactorRanges, { paceFactor })
  if (refusal) return refusal
  return found(paceFactor * 6 * Math.exp(-3.5 * Math.abs(slope + 0.05)))
}

/** Coefficients C0…C15 of s = 10 × slope, as in the Swiss federal geoportal's open code. */
const swissCoefficients = [
  14.271, 3.6991, 2.5922, -1.4384, 0.32105, 0.81542, -0.090261, -0.20757, 0.010192, 0.028588, -0.00057466,
  -0.0021842, 1.5176e-5, 8.6894e-5, -1.3584e-7, -1.4026e-6,
]

/**
 * Minutes for one horizontal kilometre on a slope.
 *
 * Source: swiss-hiking-time: polynomial of degree 15 inside ±40 %, 17 s above, −9 s below, with small steps
 * at the joints that the source has too.
 * Symbols: s = 10 × slope, C[k] = the coefficients above.
 * Ignores: ground, load, breaks. Official range ±25 %; ±40 % and the lines beyond come from the open code.
 *
 * @example
 * swissMinPerKm({ slope: 0.2 }) // 32.325701
 * swissMinPerKm({ slope: -0.5 }) // 45
 */
export function swissMinPerKm({ slope }: { slope: number }): Outcome<number> {
  const refusal = firstOutside(slopeRanges, { slope })
  if (refusal) return refusal
  const s = 10 * slope
  if (s >= 4) return found(17 * s)
  if (s <= -4) return found(-9 * s)
  return found(swissCoefficients.reduceRight((sum, coefficient) => sum * s + coefficient, 0))
}

type LegWithPace = LegTotals & { paceFactor?: number }

/** Sums hours over a leg's two even parts; a leg steeper than 100 % on average is refused by its slope. */
function hoursOverParts(
  { paceFactor = 1, ...leg }: LegWithPace,
  hoursPerKm: (slope: number) => Outcome<number>,
): Outcome<number> {
  const refusal = firstOutside(legRanges, leg) ?? firstOutside(paceFactorRanges, { paceFactor })
  if (refusal) return refusal
  let hours = 0
  for (const { share, slope } of splitByTotals(leg)) {
    const pace = hoursPerKm(slope)
    if (!pace.ok) return pace
    hours += (leg.km * share * pace.value) / paceFactor
  }
  return found(hours)
}

/**
 * Hours for a leg by Tobler's function on its two even parts.
 *
 * Source: tobler-1993, split by our-judgement. Symbols and gaps: as `toblerKmh` and `splitByTotals`.
 *
 * @example
 * toblerHours({ km: 15, ascentM: 800, descentM: 600 }) // 3.606144
 */
export function toblerHours(leg: LegWithPace): Outcome<number> {
  return hoursOverParts(leg, slope => {
    const speed = toblerKmh({ slope })
    return speed.ok ? found(1 / speed.value) : speed
  })
}

/**
 * Hours for a leg by the Swiss polynomial on its two even parts.
 *
 * Source: swiss-hiking-time, split by our-judgement. Symbols and gaps: as `swissMinPerKm`, `splitByTotals`.
 *
 * @example
 * swissHours({ km: 15, ascentM: 800, descentM: 600 }) // 4.277762
 */
export function swissHours(leg: LegWithPace): Outcome<number> {
  return hoursOverParts(leg, slope => {
    const minutes = swissMinPerKm({ slope })
    return minutes.ok ? found(minutes.value / 60) : minutes
  })
}
