// How sure the litres of one moment are: what each thing of the gear may be off by, how far the packing model is open,
// how far one hand differs, and what the hiker's own packings say of all three. By the rules of JCGM 100:2008 (GUM).

import type { Item, LitresFrom, Plan, Stow } from '../plan/types'
import { calibrate, handSpreadOf, modelSpreadOf, type PackedList } from './calibration'
import { insideLitres, overflowShares } from './containers'
import { type Ledger, unitsInPlay } from './ledger'
import { SURE_SIGMAS } from './normal'
import { type Stock, unitsOf } from './provisions'
import { packingOf, roomFor, roomRange } from './room'
import type { Moment } from './types'
import { groupedVariance, litresSigmaShare } from './uncertainty'

/** What the litres of a moment are made of. */
export interface Heap {
  plan: Plan
  gear: Item[]
  stowOf: (item: Item) => Stow
  ledger: Ledger
}

/** One thing's part in the main body at a moment, for a factor of 1, and how sure its litres are. */
export interface LitresTerm {
  item: Item
  group: LitresFrom
  /** What it takes of the main body, L. */
  bodyLitres: number
  /** Standard uncertainty of that, L. */
  sigma: number
}

export interface Spread {
  /** What the model says, for a factor of 1, L: W. */
  modelLitres: number
  /** One for each thing of the gear. */
  terms: LitresTerm[]
  /** Spread of one hand, s0, and the packing model as it is open for this heap, with each thing's u. */
  hand: number
  list: PackedList
  /** What the hiker's packings make of it. */
  factor: number
  /** s: standard uncertainty of the litres as a share of them. */
  share: number
  gain: number
  weights: number[]
}

/** The spread of the litres at a moment whose stock is `stock`. */
export function spreadOf(
  heap: Heap,
  { rigidLitres, softLitres }: Pick<Moment, 'rigidLitres' | 'softLitres'>,
  stock: Stock,
): Spread {
  const { settings, packings } = heap.plan
  const packing = packingOf(settings, 1)
  const { bodyLitres: modelLitres, perRigidLitre, perSoftLitre } = roomFor(rigidLitres, softLitres, packing)
  const terms = termsOf(heap, { perRigidLitre, perSoftLitre }, stock)
  const { low, high } = roomRange(rigidLitres, softLitres, packing)
  const shareOf = (litres: number) => (modelLitres > 0 ? litres / modelLitres : 0)
  const list: PackedList = {
    d: modelSpreadOf(settings, shareOf((high - low) / Math.sqrt(12))),
    things: terms.map(({ item: { id, litres }, group, sigma }) => ({
      id,
      litres,
      litresFrom: group,
      u: shareOf(sigma),
    })),
  }
  const { variance, ...calibrated } = calibrate(settings, list, modelLitres > 0 ? packings : [])
  return {
    modelLitres,
    terms,
    hand: handSpreadOf(settings),
    list,
    share: Math.sqrt(variance),
    ...calibrated,
  }
}

interface Slopes {
  perRigidLitre: number
  perSoftLitre: number
}

function termsOf({ plan, gear, stowOf, ledger }: Heap, slopes: Slopes, stock: Stock): LitresTerm[] {
  const units = unitsOf(stock)
  const shares = overflowShares(ledger.containers, units)
  const inPlay = gear.map(item => item.litres * item.count * unitsInPlay(item, stock))
  const weights = overflowWeights()
  return gear.map((item, i) => {
    const slope = item.build === 'rigid' && item.inside === null ? slopes.perRigidLitre : slopes.perSoftLitre
    const litres = slope * inPlay[i]!
    const rides = stowOf(item) === 'main-body' ? 1 : 0
    // Which share of its litres counts in the main body, and which share of its error.
    const counts = item.inside === null ? rides : shares.get(item.inside)!
    const errs = item.inside === null ? rides : weights.get(item.inside)!
    return {
      item,
      group: item.litresFrom,
      bodyLitres: litres * counts,
      sigma: litres * errs * litresSigmaShare(item),
    }
  })

  /**
   * What of an error inside a container reaches the main body: all of it where the container is full, less the more
   * room is left, nothing where the contents stay within it nine times in ten.
   */
  function overflowWeights(): Map<string, number> {
    const inside = new Map<string, number[]>()
    gear.forEach((item, i) => {
      if (item.inside === null) return
      const indexes = inside.get(item.inside)
      if (indexes) indexes.push(i)
      else inside.set(item.inside, [i])
    })
    const judged = {
      groupOf: (i: number) => gear[i]!.litresFrom,
      sigmaOf: (i: number) => inPlay[i]! * litresSigmaShare(gear[i]!),
    }
    return new Map(
      [...inside].map(([id, indexes]) => {
        const container = ledger.containers.get(id)!
        const spare = container.roomLitres - insideLitres(container, units)
        const sigma = Math.sqrt(groupedVariance(indexes, judged, plan.settings.habitCorrelation))
        return [id, overflowWeight(spare, sigma)]
      }),
    )
  }
}

/** w of a container with `spare` litres of room left, its contents known to `sigma` litres. */
function overflowWeight(spare: number, sigma: number): number {
  if (spare <= 0) return 1
  return sigma > 0 ? Math.max(0, 1 - spare / (SURE_SIGMAS * sigma)) : 0
}
