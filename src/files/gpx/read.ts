// Reads a GPX file in slices, so that it can say how far it is and be stopped. Never throws for what a file holds.

import { CANCELLED, refusedBySize } from './by-size'
import { createGpxParser } from './parse'
import { refused } from './refuse'
import { createTextReader } from './text'
import type { GpxRead } from './types'

/** Bytes read at a time: some milliseconds of parsing on a phone. */
const SLICE_BYTES = 262_144

export interface ReadOptions {
  /** Told the share of the file that is read, 0 to 1. */
  onProgress?: (share: number) => void
  signal?: AbortSignal
}

/**
 * The tracks, routes and waypoints of a file, or a sentence that says what is wrong and how to mend it.
 * At most 30 MB, 500,000 points and 30 levels; no document type, no entity.
 */
export async function readGpx(file: Blob, options: ReadOptions = {}): Promise<GpxRead> {
  const tooMuch = refusedBySize(file)
  if (tooMuch) return tooMuch
  const reader = createTextReader()
  const parser = createGpxParser()
  try {
    for (let at = 0; at < file.size; at += SLICE_BYTES) {
      if (options.signal?.aborted) return CANCELLED
      const bytes = await bytesOf(file.slice(at, at + SLICE_BYTES))
      if (!bytes)
        return { ok: false, message: 'The file could not be read; it may have moved. Choose it again.' }
      parser.write(reader.read(bytes))
      options.onProgress?.(Math.min(1, (at + SLICE_BYTES) / file.size))
    }
    return { ok: true, file: parser.end(reader.endsInCharacter()) }
  } catch (error) {
    return refused(error)
  }
}

/** Null when the file has gone or changed since it was chosen: the browser says so with a DOMException. */
async function bytesOf(slice: Blob): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await slice.arrayBuffer())
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}
