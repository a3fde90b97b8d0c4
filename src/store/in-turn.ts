// Pieces of work that must not run at once, as on files that several tabs share.

/** The name of the error that says: another tab holds what this piece of work needs. */
export const BUSY = 'BusyError'

/** Longer than any other tab should need; whoever waits for a restore still waits for it. */
const WAIT_MS = 3000

/**
 * Runs one piece of work after the other: over all tabs where the browser has locks, else in this one. One that the
 * other tabs keep waiting for longer than 3 s is never begun, and rejects with a `BusyError`.
 */
export function inTurn(lock: string): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return work => {
    const next = last.then(() => (navigator.locks ? locked(lock, work) : work()))
    // Whoever asked hears of a failure; the next piece of work goes on all the same.
    last = next.catch(() => {})
    return next
  }
}

function locked<T>(lock: string, work: () => Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const given = new AbortController()
    const timer = setTimeout(() => {
      reject(Object.assign(new Error('another tab is busy with it'), { name: BUSY }))
      given.abort()
    }, WAIT_MS)
    const begin = async () => {
      // A browser may hand it out all the same.
      if (given.signal.aborted) return
      clearTimeout(timer)
      await work().then(resolve, reject)
    }
    navigator.locks.request(lock, { signal: given.signal }, begin).catch(reject)
  })
}
