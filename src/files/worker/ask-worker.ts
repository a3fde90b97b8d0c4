// Asks a worker one thing and waits for the end: ended at once when cancelled, and when it does not start, breaks off or
// is silent for too long.

/** As much of a worker as is needed here. */
export type AskedWorker = Pick<
  Worker,
  'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'
>

/**
 * A worker that has told nothing for so long has stopped: each tells how far it is far more often. The longest silence
 * seen was 6.5 s, of the largest shelf in a backup on a busy desktop.
 */
export const SILENT_SECONDS = 60

/** Silence is counted in these: while a page is frozen, as on a phone that is put away, nothing is counted. */
const TICK_MS = 1000

export type StartWorker = () => AskedWorker | Promise<AskedWorker>

interface Asking<End> {
  /** May throw or reject: no workers in this browser, or its policy does not allow this one. */
  start: StartWorker
  request: unknown
  signal: AbortSignal | undefined
  /** How it ends when the signal cancels it; no worker is started for one that has done so before. */
  cancelled: End
  /** How it ends where the worker does not start or breaks off. */
  broken: End
  /** How it ends where the worker tells nothing for {@link SILENT_SECONDS}. */
  silent: End
  /** Hears what the worker tells; null: it goes on. */
  onMessage: (told: unknown) => End | null
}

/** Never rejects where the request can be cloned. The worker is gone once it has ended. */
export function askWorker<End>(asking: Asking<End>): Promise<End> {
  const { start, request, signal, cancelled, broken, silent, onMessage } = asking
  if (signal?.aborted) return Promise.resolve(cancelled)
  return new Promise((resolve, reject) => {
    let worker: AskedWorker | null = null
    let isOver = false
    let silence = 0
    // A worker that is still to be fetched is silent too.
    const ticking = setInterval(() => {
      silence += 1
      if (silence >= SILENT_SECONDS) end(silent)
    }, TICK_MS)
    const end = (result: End) => {
      isOver = true
      clearInterval(ticking)
      signal?.removeEventListener('abort', cancel)
      worker?.terminate()
      resolve(result)
    }
    const cancel = () => end(cancelled)
    signal?.addEventListener('abort', cancel)
    started(start)
      .then(each => {
        if (isOver) return each?.terminate()
        if (!each) return end(broken)
        worker = each
        each.onmessage = ({ data }: MessageEvent<unknown>) => {
          silence = 0
          const result = onMessage(data)
          if (result !== null) end(result)
        }
        each.onerror = event => {
          event.preventDefault?.()
          end(broken)
        }
        each.onmessageerror = () => end(broken)
        each.postMessage(request)
      })
      .catch(reject)
  })
}

async function started(start: StartWorker): Promise<AskedWorker | null> {
  try {
    return await start()
  } catch {
    return null
  }
}
