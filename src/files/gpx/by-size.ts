// What is said of a file before any of it is read, apart from the reader, which only the worker needs.

import { GPX_CAPS } from './limits'
import type { Refused } from './types'

export const CANCELLED: Refused = { ok: false, message: 'Reading was cancelled; nothing has changed.' }

/** What is wrong with a file before any of it is read, or null. */
export function refusedBySize({ size }: { size: number }): Refused | null {
  if (size === 0) return { ok: false, message: 'The file is empty: export it again.' }
  if (size <= GPX_CAPS.fileBytes) return null
  const megabytes = (size / 1e6).toFixed(1)
  const most = GPX_CAPS.fileBytes / 1e6
  return {
    ok: false,
    message: `The file has ${megabytes} MB; up to ${most} MB are read: thin the track out, or export it in parts.`,
  }
}
