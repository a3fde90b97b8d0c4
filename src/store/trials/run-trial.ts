// Runs the trials of a plan off the page's own thread: told how far they are, ended at once when cancelled.

import { startOwnWorker } from '../../files/worker'
import type { Plan } from '../../plan'
import type { Reckoning, Simulation } from '../../reckon'
import type { TrialAsked, TrialTold } from './messages'
import workerAddress from './worker.ts?worker&url'

/** As much of a worker as is needed here. */
export type TrialWorker = Pick<
  Worker,
  'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'
>

export interface TrialOptions {
  plan: Plan
  /** What `reckon(plan)` gave. */
  reckoning: Reckoning
  runs: number
  seed: number
  /** A share from 0 to 1. */
  onProgress: (share: number) => void
  signal: AbortSignal
  startWorker?: () => TrialWorker
}

export type TrialEnd = { ok: true; simulation: Simulation } | { ok: false; message: string }

const CANCELLED: TrialEnd = { ok: false, message: 'Trial cancelled.' }
const BROKEN: TrialEnd = {
  ok: false,
  message: 'The part of the app that runs trials did not start or broke off. Reload the app and try again.',
}

/** Never rejects. */
export function runTrial(options: TrialOptions): Promise<TrialEnd> {
  const {
    plan,
    reckoning,
    runs,
    seed,
    onProgress,
    signal,
    startWorker = () => startOwnWorker(workerAddress, 'trials'),
  } = options
  if (signal.aborted) return Promise.resolve(CANCELLED)
  const worker = started(startWorker)
  if (!worker) return Promise.resolve(BROKEN)
  return new Promise(resolve => {
    const end = (result: TrialEnd) => {
      signal.removeEventListener('abort', cancel)
      worker.terminate()
      resolve(result)
    }
    const cancel = () => end(CANCELLED)
    signal.addEventListener('abort', cancel)
    worker.onmessage = ({ data }: MessageEvent<TrialTold>) => {
      if (data.kind === 'tried') onProgress(data.tried / runs)
      else end({ ok: true, simulation: data.simulation })
    }
    worker.onerror = event => {
      event.preventDefault?.()
      end(BROKEN)
    }
    worker.onmessageerror = () => end(BROKEN)
    worker.postMessage({ kind: 'try', plan, reckoning, runs, seed } satisfies TrialAsked)
  })
}

/** Null where a worker cannot be started: none in this browser, or its policy does not allow it. */
function started(startWorker: () => TrialWorker): TrialWorker | null {
  try {
    return startWorker()
  } catch {
    return null
  }
}
