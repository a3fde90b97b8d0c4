// What a GPX file may hold, declared once for the reader, its messages and the tests.
// The ends are judgements of ours: far above a real trip's track, low enough for a phone's memory.

export const GPX_CAPS = {
  fileBytes: 30_000_000,
  points: 500_000,
  depth: 30,
  /** Tracks and routes that can be chosen from. */
  lines: 1000,
  /** Named points that are looked for near the track. */
  waypoints: 2000,
  nameLength: 200,
} as const

/** Elevations outside are a recorder's "unknown", such as −32768: lower than any shore, higher than any summit. */
export const ELEVATION_M = { min: -500, max: 9000 } as const
