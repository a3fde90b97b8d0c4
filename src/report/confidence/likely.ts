// The likely litres in words. The range reaches as far below the need as above it and holds 8 cases of 10: 1 of 10 needs
// less, 1 of 10 needs more, so that its upper end is enough in 9 of 10.

import { type Need, SURE_SIGMAS } from '../../reckon'
import { formatQuantity } from '../../units'
import { bareNumber, type Formats } from '../formats'

type Sure = Pick<Need, 'bodyLitres' | 'sigmaV'>

export function likelyRange({ bodyLitres, sigmaV }: Sure): { low: number; high: number } {
  return { low: Math.max(0, bodyLitres - SURE_SIGMAS * sigmaV), high: bodyLitres + SURE_SIGMAS * sigmaV }
}

/** "38 to 47 L", or "42 L" where both ends read the same; never narrower than it is. */
export function likelyText(need: Sure, formats: Pick<Formats, 'system' | 'litresUp'>): string {
  const { low, high } = likelyRange(need)
  const down = formatQuantity('number', low, { system: formats.system, digits: 0, round: 'down' })
  const up = formats.litresUp(high)
  return up.startsWith(`${down}\u00a0`) ? up : `${down} to ${up}`
}

/** The likely load with all the water: "15.8 to 16.2 kg", or one figure where both ends read the same. */
export function likelyLoadText({ peakLoadFullWaterKg, sigmaM }: Need, { kg }: Pick<Formats, 'kg'>): string {
  const low = kg(Math.max(0, peakLoadFullWaterKg - SURE_SIGMAS * sigmaM))
  const high = kg(peakLoadFullWaterKg + SURE_SIGMAS * sigmaM)
  return low === high ? high : `${bareNumber(low)} to ${high}`
}

/** How much narrower the likely range is with another sigma, L. */
export function narrowing(need: Sure, sigmaV: number): number {
  const width = (of: Sure) => likelyRange(of).high - likelyRange(of).low
  return width(need) - width({ ...need, sigmaV })
}

/** "40 L is enough in about 9 of 10 cases if the list is complete". */
export const enoughText = (need: Need, formats: Formats): string =>
  `${formats.litresUp(need.bodyLitresSafe)} is enough in about 9 of 10 cases if the list is complete`
