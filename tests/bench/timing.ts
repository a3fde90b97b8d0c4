// How long something takes, on a machine that does other things too.

declare const performance: { now: () => number }

export interface Timing {
  /** Milliseconds of one run. */
  median: number
  /** The fastest run: nearest to what the work itself takes. */
  least: number
}

/** Clocks in a browser tick every 0.1 ms: shorter work is timed by the batch. */
const BATCH_MS = 2
const MOST_BATCHES = 400

/** Runs it for about `budgetMs`, after as long again at most to warm up; three times at least. */
export function timed(run: () => void, budgetMs: number): Timing {
  let size = 1
  const warm = performance.now() + budgetMs / 2
  let batchMs = batchOf(run, size)
  while (performance.now() < warm) {
    if (batchMs < BATCH_MS) size *= 2
    batchMs = batchOf(run, size)
  }
  const times: number[] = []
  const end = performance.now() + budgetMs
  while (times.length < 3 || (performance.now() < end && times.length < MOST_BATCHES))
    times.push(batchOf(run, size) / size)
  times.sort((a, b) => a - b)
  return { median: times[times.length >> 1]!, least: times[0]! }
}

export function timedOnce(run: () => void): Timing {
  const ms = batchOf(run, 1)
  return { median: ms, least: ms }
}

function batchOf(run: () => void, size: number): number {
  const start = performance.now()
  for (let i = 0; i < size; i++) run()
  return performance.now() - start
}

/** The power of `n` with which the times grow: the slope of the best straight line through both logarithms. */
export function growthExponent(ns: number[], times: number[]): number {
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const [x, y] = [ns.map(Math.log), times.map(Math.log)] as const
  const [meanX, meanY] = [mean(x), mean(y)]
  const covariance = mean(x.map((each, i) => (each - meanX) * (y[i]! - meanY)))
  return covariance / mean(x.map(each => (each - meanX) ** 2))
}
