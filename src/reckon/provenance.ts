// What the need stands on: the litres of the fullest moment and the load of the heaviest with all the water wanted, by
// how each is known.

import type { LitresFrom, MassFrom, Plan } from '../plan/types'
import { unitsInPlay } from './ledger'
import { fullestOf } from './need'
import { partsOf } from './remedies-parts'
import { spreadOf } from './spread'
import type { Reckoning } from './types'

export interface Provenance {
  /** Main-body litres with their share of the gaps, L: they add up to `need.bodyLitres`. */
  litres: Record<LitresFrom | 'water', number>
  /** They add up to `need.peakLoadFullWaterKg`. */
  kg: Record<MassFrom | 'water', number>
}

/** `reckoning` must be what `reckon(plan)` gave. Water is what no thing of the gear accounts for. */
export function provenanceOf(plan: Plan, reckoning: Reckoning): Provenance {
  const { moments, need } = reckoning
  const parts = partsOf(plan, reckoning)
  const fullest = fullestOf(moments)
  const litres: Provenance['litres'] = { filled: 0, dimensions: 0, stated: 0, kind: 0, guess: 0, water: 0 }
  for (const { group, bodyLitres } of spreadOf(parts, moments[fullest]!, parts.stocks[fullest]!).terms)
    litres[group] += need.factor * bodyLitres

  const heaviest = moments.findIndex(
    ({ stop, phase }) => stop === need.peakFullWaterAt.stop && phase === need.peakFullWaterAt.phase,
  )
  const kg: Provenance['kg'] = { scale: 0, stated: 0, guess: 0, water: 0 }
  for (const item of parts.gear) {
    if (parts.stowOf(item) === 'worn') continue
    kg[item.massFrom] += item.massKg * item.count * unitsInPlay(item, parts.stocks[heaviest]!)
  }
  return {
    litres: { ...litres, water: rest(need.bodyLitres, litres) },
    kg: { ...kg, water: rest(need.peakLoadFullWaterKg, kg) },
  }
}

const rest = (whole: number, parts: Record<string, number>) =>
  Math.max(
    0,
    Object.values(parts).reduce((left, part) => left - part, whole),
  )
