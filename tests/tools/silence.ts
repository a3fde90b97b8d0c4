// What becomes of asking a worker that tells nothing any more.

import { vi } from 'vitest'
import { SILENT_SECONDS } from '../../src/files/worker'

/** The end of what is asked, a second before the limit of silence (null: it is still waited for) and at it. */
export async function inSilence<End>(ask: () => Promise<End>): Promise<[End | null, End | null]> {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
  try {
    let end: End | null = null
    void ask().then(found => {
      end = found
    })
    await vi.advanceTimersByTimeAsync((SILENT_SECONDS - 1) * 1000)
    const before = end
    await vi.advanceTimersByTimeAsync(1000)
    return [before, end]
  } finally {
    vi.useRealTimers()
  }
}
