// What the page and the worker of the trials say to each other.

import type { Plan } from '../../plan'
import type { Reckoning, Simulation } from '../../reckon'

export interface SimulationAsked {
  kind: 'try'
  plan: Plan
  /** What the engine made of it: so the worker need not hold all of the engine. */
  reckoning: Reckoning
  runs: number
  seed: number
}

export type SimulationTold = { kind: 'tried'; tried: number } | { kind: 'done'; simulation: Simulation }
