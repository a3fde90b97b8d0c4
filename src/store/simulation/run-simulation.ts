// Runs the trials of a plan off the page's own thread: told how far they are, ended at once when cancelled.

import {
  type AskedWorker,
  askWorker,
  SILENT_SECONDS,
  type StartWorker,
  startOwnWorker,
} from '../../files/worker'
import type { Plan } from '../../plan'
import type { Reckoning, Simulation } from '../../reckon'
import type { SimulationAsked, SimulationTold } from './messages'

export type SimulationWorker = AskedWorker

export interface RunOptions {
  plan: Plan
  /** What `reckon(plan)` gave. */
  reckoning: Reckoning
  runs: number
  seed: number
  /** A share from 0 to 1. */
  onProgress: (share: number) => void
  signal: AbortSignal
  startWorker?: StartWorker
}

export type SimulationEnd = { ok: true; simulation: Simulation } | { ok: false; message: string }

const CANCELLED: SimulationEnd = { ok: false, message: 'Simulation cancelled.' }
const BROKEN: SimulationEnd = {
  ok: false,
  message: 'The simulation did not start or broke off. Reload the app and try again.',
}
const SILENT: SimulationEnd = {
  ok: false,
  message: `The simulation was stopped: nothing had been heard of it for ${SILENT_SECONDS} seconds. Close other apps and tabs, then try again.`,
}

/** Never rejects. */
export function runSimulation(options: RunOptions): Promise<SimulationEnd> {
  const {
    plan,
    reckoning,
    runs,
    seed,
    onProgress,
    signal,
    startWorker = () => startOwnWorker(() => import('./worker'), 'trials'),
  } = options
  return askWorker<SimulationEnd>({
    start: startWorker,
    request: { kind: 'try', plan, reckoning, runs, seed } satisfies SimulationAsked,
    signal,
    cancelled: CANCELLED,
    broken: BROKEN,
    silent: SILENT,
    onMessage(data) {
      const told = data as SimulationTold
      if (told.kind !== 'tried') return { ok: true, simulation: told.simulation }
      onProgress(told.tried / runs)
      return null
    },
  })
}
