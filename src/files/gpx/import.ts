// Imports a GPX file off the page's own thread: progress while it goes, ended at once when it is cancelled.

import { workerMessage } from './messages'
import { CANCELLED, type ReadOptions, refusedBySize } from './read'
import type { ReadRequest } from './request'
import { startGpxWorker } from './start-worker'
import type { GpxMeasured, Refused } from './types'

/** As much of a worker as is needed here. */
export type WorkerLike = Pick<
  Worker,
  'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'
>

export interface ImportOptions extends ReadOptions {
  startWorker?: () => WorkerLike
}

const FAILED: Refused = {
  ok: false,
  message:
    'The part of the app that reads tracks did not start or broke off. Reload the app and choose the file again; your trip is as it was.',
}

/**
 * The measured tracks of a file, or a sentence that says what is wrong. Never rejects. Files over 30 MB are refused
 * before anything is read; the signal ends the worker; `onProgress` hears shares from 0 to 1.
 */
export function importGpx(file: File, options: ImportOptions = {}): Promise<GpxMeasured> {
  const { onProgress, signal, startWorker = startGpxWorker } = options
  const tooMuch = refusedBySize(file)
  if (tooMuch) return Promise.resolve(tooMuch)
  if (signal?.aborted) return Promise.resolve(CANCELLED)
  const worker = started(startWorker)
  if (!worker) return Promise.resolve(FAILED)

  return new Promise(resolve => {
    const end = (result: GpxMeasured) => {
      signal?.removeEventListener('abort', cancel)
      worker.terminate()
      resolve(result)
    }
    const cancel = () => end(CANCELLED)
    signal?.addEventListener('abort', cancel)
    worker.onmessage = ({ data }) => {
      const message = workerMessage(data)
      if (!message) end(FAILED)
      else if (message.kind === 'done') end(message.result)
      else onProgress?.(message.share)
    }
    worker.onerror = event => {
      event.preventDefault?.()
      end(FAILED)
    }
    worker.onmessageerror = () => end(FAILED)
    worker.postMessage({ kind: 'read', file } satisfies ReadRequest)
  })
}

/** Null where a worker cannot be started: none in this browser, or its policy does not allow it. */
function started(startWorker: () => WorkerLike): WorkerLike | null {
  try {
    return startWorker()
  } catch {
    return null
  }
}
