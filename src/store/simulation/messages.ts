// What the page and the worker of the trials and of sharing out say to each other.

import type { PartyPlan, Plan } from '../../plan'
import type { PartyReckoning, Reckoning, Simulation } from '../../reckon'

export interface SimulationAsked {
  kind: 'try'
  plan: Plan
  /** What the engine made of it: so the worker need not hold all of the engine. */
  reckoning: Reckoning
  runs: number
  seed: number
}

export interface SharingAsked {
  kind: 'share-out'
  plan: PartyPlan
}

export type SimulationTold = { kind: 'tried'; tried: number } | { kind: 'done'; simulation: Simulation }

/** Who carries what, by the ids of item and person, and how good that is; or why it cannot be told. */
export type SharingTold =
  | { ok: true; shared: Record<string, string>; split: PartyReckoning['split'] }
  | { ok: false; message: string }
