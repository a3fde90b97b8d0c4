// One packing of the hiker's own, from what was seen to what it says of the packing model.

import { filledBoxLitres, measuringRanges } from '../../equations'
import { LIMITS, type Limit, type Plan } from '../../plan'
import type { Said } from '../../plan/shelf'
import { CALIBRATION_LIMITS, fullnessNotClosing, observedFactor, reckon } from '../../reckon'

/** When it was packed: at the first stop with all the plan carries there, or before food and water went in. */
export type PackedWhen = 'start' | 'bare'

/** What may be typed. */
export const packedLimits = {
  bodyLitres: LIMITS.pack.bodyLitres,
  fullness: { min: CALIBRATION_LIMITS.fullness.min, max: 1, unit: 'of the main body' },
  overLitres: CALIBRATION_LIMITS.overLitres,
  lengthCm: measuringRanges.lengthCm,
  widthCm: measuringRanges.widthCm,
  heightCm: measuringRanges.heightCm,
} as const satisfies Record<string, Limit>

/** What the model says the things take at that moment with the personal factor 1, L; null where the plan does not settle. */
export function litresAtFactor1(plan: Plan, when: PackedWhen): number | null {
  const settings = { ...plan.settings, personalFactor: 1, personalFactorSpread: null }
  const asked = { ...(when === 'bare' ? withoutProvisions(plan) : plan), settings, packs: [] }
  const reckoned = reckon(asked)
  return reckoned.ok ? reckoned.reckoning.moments[0]!.bodyLitres : null
}

/** The plan with nothing to eat and nothing to drink: bottles and food boxes go along empty. */
function withoutProvisions({ trip, gear, ...plan }: Plan): Plan {
  return {
    ...plan,
    trip: {
      ...trip,
      water: { ...trip.water, litresPerHour: 0, campLitres: 0, reserveLitres: 0 },
      meals: { ...trip.meals, ration: 'fixed' },
    },
    gear: gear.map(item =>
      item.use === 'daily' ? { ...item, massKg: 0, litres: 0, litresFrom: 'guess', litresRange: null } : item,
    ),
  }
}

export type PackedSeen =
  | { ok: true; factor: number; bodyLitres: number; reckonedLitresAtFactor1: number }
  | { ok: false; message: string }

/** The factor that a packing observes, or why it cannot. `bodyLitres` is not used for a box, which measures them. */
export function packedSeen(seen: {
  said: Said
  bodyLitres: number
  reckonedLitresAtFactor1: number
}): PackedSeen {
  const { said, reckonedLitresAtFactor1 } = seen
  if (reckonedLitresAtFactor1 < CALIBRATION_LIMITS.reckonedLitresAtFactor1.min)
    return {
      ok: false,
      message:
        'By this list next to nothing rides in the main body then: give its things their litres first.',
    }
  const filled = filledOf(said, seen.bodyLitres)
  if (!filled.ok && filled.field === 'fullness' && said.how === 'over')
    return {
      ok: false,
      message: `Write at most ${seen.bodyLitres} L: what does not close by more than the pack holds tells nothing of the packing.`,
    }
  if (!filled.ok) return { ok: false, message: outside(filled.limit) }
  const { fullness, bodyLitres } = filled
  const observed = observedFactor({ fullness, bodyLitres, reckonedLitresAtFactor1 })
  if (observed.ok) return { ok: true, factor: observed.value, bodyLitres, reckonedLitresAtFactor1 }
  const { field, got, limit } = observed
  if (field !== 'factor') return { ok: false, message: outside(limit) }
  return {
    ok: false,
    message: `That would be ${got.toFixed(2)} times what is reckoned, outside ${limit.min} to ${limit.max}: something other than the packing is wrong. Look at the litres of the pack, of the list, and at what was along.`,
  }
}

function filledOf(said: Said, packLitres: number) {
  if (said.how === 'full') return { ok: true as const, fullness: said.fullness, bodyLitres: packLitres }
  if (said.how === 'over') {
    const full = fullnessNotClosing({ bodyLitres: packLitres, overLitres: said.overLitres })
    return full.ok ? { ok: true as const, fullness: full.value, bodyLitres: packLitres } : full
  }
  const box = filledBoxLitres(said)
  return box.ok ? { ok: true as const, fullness: 1, bodyLitres: box.value.litres } : box
}

const outside = ({ min, max, unit }: Limit) => `Write an amount from ${min} to ${max} ${unit}.`
