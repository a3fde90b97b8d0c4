// By how much a set-up fails, and what pack would do for the trip: what to look for where no change helps.

import type { Plan } from '../plan/types'
import { isMended } from './remedies-candidate'
import type { Reckoning } from './types'

/** What a pack must offer for a trip; null where the trip asks for nothing of the kind. */
export interface Requirement {
  /** Main body that is enough nine times in ten. */
  bodyLitresSafe: number
  /** Rated load for the contents and a liner; the pack's own mass comes on top where its rating includes it. */
  contentsKg: number
  /** The same with the pack's mass. */
  ratedKg: number
  /** More than is carried without a frame. */
  frame: boolean
  outsideLitres: number
  innerHeightCm: number | null
  innerWidthCm: number | null
}

/** How much is wanting of each; 0 where nothing is. */
export interface Shortfall {
  litres: number
  kg: number
  outsideLitres: number
  heightCm: number
  widthCm: number
  wanted: Requirement
}

/** What the trip asks of a pack that itself weighs `packKg`. A liner counts where the trip is wet. */
export function requirementOf(plan: Plan, { need }: Reckoning, packKg: number): Requirement {
  const contentsKg = need.peakLoadFullWaterKg + (plan.trip.wet ? plan.settings.linerKg : 0)
  return {
    bodyLitresSafe: need.bodyLitresSafe,
    contentsKg,
    ratedKg: contentsKg + packKg,
    frame: contentsKg + packKg > plan.settings.framelessCeilingKg,
    outsideLitres: need.outsideLitres,
    innerHeightCm: need.longestCm,
    innerWidthCm: need.widestCm,
  }
}

/** For the set-up at `setupIndex` of `reckoning.packs`; null when it does and fits nine times in ten. Throws RangeError when there is none. */
export function shortfallOf(plan: Plan, reckoning: Reckoning, setupIndex: number): Shortfall | null {
  const judged = reckoning.packs[setupIndex]
  if (!judged) throw new RangeError(`set-up ${setupIndex}: there are ${reckoning.packs.length}`)
  if (isMended(judged)) return null
  const pack = plan.packs[judged.pack]!
  const { need } = reckoning
  const over = (needed: number | null, ...rooms: (number | null)[]) => {
    const known = rooms.filter(room => room !== null)
    return needed === null || known.length === 0 ? 0 : Math.max(0, needed - Math.min(...known))
  }
  return {
    litres: judged.verdicts.includes('fits-with-collar') ? 0 : over(need.bodyLitres, pack.bodyLitres),
    kg: over(judged.ratedAgainstKg, judged.loadLimitKg),
    outsideLitres: over(need.outsideLitres, pack.outsideLitres),
    heightCm: over(need.longestCm, pack.innerHeightCm),
    widthCm: over(need.widestCm, pack.innerWidthCm, pack.innerDepthCm),
    wanted: requirementOf(plan, reckoning, pack.setups[judged.index]!.massKg),
  }
}
