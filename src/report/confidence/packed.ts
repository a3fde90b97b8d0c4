// One packing of the hiker's own, from what was seen to what it says of the packing model.

import { filledBoxLitres, measuringRanges } from '../../equations'
import {
  type Draft,
  fullnessNotClosing,
  isWithin,
  LIMITS,
  type Limit,
  PACKING_FACTOR,
  type PastPacking,
  type Plan,
} from '../../plan'
import type { PackingList, Said } from '../../plan/shelf'
import { observedFactor, packedListAt, reckon } from '../../reckon'

/** When it was packed: at the first stop with all the plan carries there, or before food and water went in. */
export type PackedWhen = 'start' | 'bare'

const { packing } = LIMITS

/** What may be typed. */
export const packedLimits = {
  bodyLitres: packing.packLitres,
  fullness: { min: packing.p.min, max: 1, unit: packing.p.unit },
  overLitres: packing.overLitres,
  lengthCm: measuringRanges.lengthCm,
  widthCm: measuringRanges.widthCm,
  heightCm: measuringRanges.heightCm,
} as const satisfies Record<string, Limit>

/** What was reckoned of the list as it was packed: its litres W, how far the model is open, and each thing's part. */
export type Reckoned = Pick<PastPacking, 'W' | 'd' | 'things'>

/** The list of that moment by the packing model alone; null where the plan does not settle. */
export function reckonedList(plan: Plan, when: PackedWhen): Reckoned | null {
  const settings = { ...plan.settings, personalFactor: 1, personalFactorSpread: null }
  const asked = {
    ...(when === 'bare' ? withoutProvisions(plan) : plan),
    settings,
    packs: [],
    packings: [],
  }
  const reckoned = reckon(asked)
  return reckoned.ok ? packedListAt(asked, reckoned.reckoning, 0) : null
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

/** The list under ids that outlast the trip: those of the shelf, once each, for the items that came from there. */
export function listOnShelf(
  { d, things }: Reckoned,
  { gear }: Pick<Draft, 'gear'>,
): Omit<PackingList, 'packFrom'> {
  const links = new Map(gear.flatMap(({ id, shelf }) => (shelf ? [[id, shelf.id] as const] : [])))
  const taken = new Set(things.map(({ id }) => id))
  return {
    d,
    things: things.map(thing => {
      const link = links.get(thing.id)
      if (link === undefined || taken.has(link)) return thing
      taken.add(link)
      return { ...thing, id: link }
    }),
  }
}

export type PackedSeen = { ok: true; factor: number; bodyLitres: number } | { ok: false; message: string }

/** The factor that a packing observes, or why it cannot. `bodyLitres` is not used for a box, which measures them. */
export function packedSeen(seen: { said: Said; bodyLitres: number; W: number }): PackedSeen {
  const { said, W } = seen
  if (W < LEAST_LITRES)
    return {
      ok: false,
      message: 'By this list next to nothing is in the main body then: give its items their litres first.',
    }
  const filled = filledOf(said, seen.bodyLitres)
  if (!filled.ok) return filled
  const { p, bodyLitres } = filled
  const factor = observedFactor({ p, packLitres: bodyLitres, W })
  const { min, max } = PACKING_FACTOR
  if (isWithin(factor, PACKING_FACTOR)) return { ok: true, factor, bodyLitres }
  return {
    ok: false,
    message: `That would be ${factor.toFixed(2)} times what is calculated, outside ${min} to ${max}: something other than the packing is wrong. Check the litres of the pack and of the list, and what was along.`,
  }
}

/** So little in the main body tells nothing, L. */
const LEAST_LITRES = 0.5

type Filled = { ok: true; p: number; bodyLitres: number } | { ok: false; message: string }

function filledOf(said: Said, packLitres: number): Filled {
  if (said.how === 'box') {
    const box = filledBoxLitres(said)
    return box.ok ? within(1, box.value.litres) : { ok: false, message: outside(box.limit) }
  }
  if (said.how === 'full') return within(said.fullness, packLitres)
  const most = packLitres * (packing.p.max - 1)
  if (said.overLitres <= most) return within(fullnessNotClosing(packLitres, said.overLitres), packLitres)
  return {
    ok: false,
    message: `Write at most ${+most.toFixed(1)} L. A pack more than half too full says nothing of your packing.`,
  }
}

function within(p: number, bodyLitres: number): Filled {
  if (!isWithin(bodyLitres, packing.packLitres)) return { ok: false, message: outside(packing.packLitres) }
  if (!isWithin(p, packing.p)) return { ok: false, message: outside(packing.p) }
  return { ok: true, p, bodyLitres }
}

const outside = ({ min, max, unit }: Limit) => `Write an amount from ${min} to ${max} ${unit}.`
