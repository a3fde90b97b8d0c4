// Pieces of work that must not run at once, as on files that several tabs share.

/** Runs one piece of work after the other: over all tabs where the browser has locks, else in this one. */
export function inTurn(lock: string): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return work => {
    const next = last.then(async () =>
      navigator.locks ? await navigator.locks.request(lock, work) : await work(),
    )
    // Whoever asked hears of a failure; the next piece of work goes on all the same.
    last = next.catch(() => {})
    return next
  }
}
