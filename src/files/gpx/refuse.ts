// How reading stops: a refusal carries the sentence for the reader and is caught in one place.

import type { Refused } from './types'

const refusals = new WeakSet<object>()

/** An error to throw whose message says what is wrong with the file and how to mend it. */
export function refusal(message: string): Error {
  const error = new Error(message)
  refusals.add(error)
  return error
}

/** What a thrown refusal says; anything else is not ours and is thrown on. */
export function refused(error: unknown): Refused {
  if (!(error instanceof Error) || !refusals.has(error)) throw error
  return { ok: false, message: error.message }
}
