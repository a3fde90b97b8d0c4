// What the screens know of updates, before and after the code that looks after them has come.

import { signal } from '@preact/signals'

export type UpdateSignals = ReturnType<typeof updateSignals>

export const updateSignals = () => ({
  updateWaiting: signal(false),
  offlineReady: signal(false),
  updateProblem: signal<string | null>(null),
})

export const notReadyText = (error: unknown): string => {
  const why = error instanceof Error ? error.message : String(error)
  return `The app could not be made ready for use without a network (${why}): reload it while you are online.`
}
