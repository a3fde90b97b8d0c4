// No wait without an end: what does not answer in its time counts as failed, so that it can be said.

/** The promise's own outcome, or a rejection with a `TimeoutError` when it takes longer than this. */
export function within<T>(promise: PromiseLike<T>, ms: number): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), ms)
    promise.then(resolve, reject).then(() => clearTimeout(timer))
  })
}
