// Imports a GPX file off the page's own thread: progress while it goes, ended at once when it is cancelled.

import { type AskedWorker, askWorker, SILENT_SECONDS, type StartWorker } from '../worker'
import { CANCELLED, refusedBySize } from './by-size'
import { workerMessage } from './messages'
import type { ReadOptions } from './read'
import type { ReadRequest } from './request'
import { startGpxWorker } from './start-worker'
import type { GpxMeasured, Refused } from './types'

export type WorkerLike = AskedWorker

export interface ImportOptions extends ReadOptions {
  startWorker?: StartWorker
}

const FAILED: Refused = {
  ok: false,
  message:
    'The part of the app that reads tracks did not start or broke off. Reload the app and choose the file again; your trip is as it was.',
}

const SILENT: Refused = {
  ok: false,
  message: `Reading was stopped: nothing had been heard of it for ${SILENT_SECONDS} seconds. Close other apps and tabs, then choose the file again; your trip is as it was.`,
}

/**
 * The measured tracks of a file, or a sentence that says what is wrong. Never rejects. Files over 30 MB are refused
 * before anything is read; the signal ends the worker; `onProgress` hears shares from 0 to 1.
 */
export function importGpx(file: File, options: ImportOptions = {}): Promise<GpxMeasured> {
  const { onProgress, signal, startWorker = startGpxWorker } = options
  const tooMuch = refusedBySize(file)
  if (tooMuch) return Promise.resolve(tooMuch)
  return askWorker<GpxMeasured>({
    start: startWorker,
    request: { kind: 'read', file } satisfies ReadRequest,
    signal,
    cancelled: CANCELLED,
    broken: FAILED,
    silent: SILENT,
    onMessage(data) {
      const message = workerMessage(data)
      if (!message) return FAILED
      if (message.kind === 'done') return message.result
      onProgress?.(message.share)
      return null
    },
  })
}
