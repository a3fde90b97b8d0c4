// A light on the amounts typed: how heavy a litre of the soft things inside is, against what was published of soft cargo
// packed by hand. It changes no figure. Source: nasa-ctb; the limits and the least litres are our judgement.

import { softCargo } from '../equations'
import { isWithin, type Plan } from '../plan'
import type { Reckoning } from '../reckon'
import type { Formats } from './formats'
import { momentAt } from './places'

/** Fewer litres of soft things than this may be of any density. */
const LEAST_LITRES = 10

/** One notice where the soft things in the main body, as a whole, are lighter or heavier than such things are. */
export function densityNotices({ settings }: Plan, reckoning: Reckoning, formats: Formats) {
  const { kg, litres } = momentAt(reckoning, reckoning.need.bodyAt).loose
  if (litres < LEAST_LITRES) return []
  const packedLitres = litres / settings.softPacking
  const kgPerLitre = kg / packedLitres
  const plausible = softCargo.plausibleKgPerLitre
  if (isWithin(kgPerLitre, plausible)) return []
  const { min, max } = plausible
  const look =
    kgPerLitre < min
      ? 'an item with too many litres, or with grams where kilograms were meant'
      : 'an item with too few litres, or with too much mass'
  return [
    {
      signal: 'NOTICE',
      about: 'model',
      short: 'Check an amount in the gear',
      text: `The soft items inside come to ${formats.density(kgPerLitre)}: ${formats.kg(kg)} in ${formats.litres(packedLitres)}. Soft goods packed by hand are about ${formats.density(softCargo.typicalKgPerLitre)}; under ${formats.density(min)} or over ${formats.density(max)} an amount may be typed wrong. Look for ${look}.`,
    } as const,
  ]
}
