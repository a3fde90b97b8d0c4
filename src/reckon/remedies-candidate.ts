// Trying a change: one set-up alone with its plan, reckoned in full, and whether it then does.

import type { Plan } from '../plan/types'
import type { After, Failing } from './remedies-types'
import type { Reckoning, SetupReckoning } from './types'
import { VERDICTS } from './verdict-table'

/** `reckon`, handed in: the engine's index knows the remedies, so they cannot know it. */
export type Reckon = (plan: Plan) => { ok: true; reckoning: Reckoning } | { ok: false }

/** A plan whose only pack has one set-up only, and its Reckoning. */
export interface Candidate {
  reckon: Reckon
  plan: Plan
  reckoning: Reckoning
}

/** The set-up at `setupIndex` of `reckoning.packs`, alone. Throws RangeError when there is none. */
export function candidateOf(
  reckon: Reckon,
  { plan, reckoning, setupIndex }: { plan: Plan; reckoning: Reckoning; setupIndex: number },
): Candidate {
  const judged = reckoning.packs[setupIndex]
  if (!judged) throw new RangeError(`set-up ${setupIndex}: there are ${reckoning.packs.length}`)
  const pack = plan.packs[judged.pack]!
  return {
    reckon,
    plan: { ...plan, packs: [{ ...pack, setups: [pack.setups[judged.index]!] }] },
    reckoning: { ...reckoning, packs: [{ ...judged, pack: 0, index: 0 }] },
  }
}

export const judgedIn = ({ reckoning }: Pick<Candidate, 'reckoning'>): SetupReckoning => reckoning.packs[0]!

/** The changed plan reckoned; null when it is refused. */
export function tried(candidate: Candidate, plan: Plan): Candidate | null {
  const reckoned = candidate.reckon(plan)
  return reckoned.ok ? { ...candidate, plan, reckoning: reckoned.reckoning } : null
}

/** What every remedy aims at: it does, and fits nine times in ten, if need be with the collar raised. */
export const isMended = ({ suffices, verdicts }: SetupReckoning): boolean =>
  suffices && (!verdicts.includes('tight') || verdicts.includes('fits-with-collar'))

/** The aim is met, and not by walking with less water than before. */
export function mends(before: Candidate, after: Candidate | null): after is Candidate {
  if (!after || !isMended(judgedIn(after))) return false
  return after.reckoning.need.waterShortLitres <= before.reckoning.need.waterShortLitres + 1e-9
}

export function failingsOf({ verdicts }: SetupReckoning): Failing[] {
  const collar = verdicts.includes('fits-with-collar')
  const wanting = verdicts.filter(code => VERDICTS[code].weight === 'fails' || code === 'tight')
  const found = new Set(wanting.map(code => VERDICTS[code].about as Failing))
  if (collar) found.delete('room')
  return [...found]
}

/** What comes of a change, for the set-up that failed `before`. */
export function afterOf(before: SetupReckoning, { need }: Reckoning, setup: SetupReckoning): After {
  return {
    bodyLitres: need.bodyLitres,
    peakLoadKg: need.peakLoadFullWaterKg,
    carriedKg: setup.carriedKg,
    fitChance: setup.fitChance,
    collarChance: setup.verdicts.includes('fits-with-collar') ? setup.fitChanceWithCollar : null,
    mends: failingsOf(before),
  }
}
