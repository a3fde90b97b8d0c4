// The worker's whole job as a function: read a file, measure its tracks, and say how far it is.

import { type ReadOptions, readGpx } from './read'
import { measureFile } from './track'
import type { GpxMeasured } from './types'

/** Reading takes most of the time; measuring the rest. */
const READING_SHARE = 0.9

export async function measureGpx(file: Blob, { onProgress, signal }: ReadOptions = {}): Promise<GpxMeasured> {
  const read = await readGpx(file, {
    ...(signal && { signal }),
    ...(onProgress && { onProgress: share => onProgress(READING_SHARE * share) }),
  })
  if (!read.ok) return read
  const measured = measureFile(read.file)
  onProgress?.(1)
  return measured
}
