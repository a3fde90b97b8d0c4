// What is read from a GPX file, and what is measured of each of its tracks. All of it survives structuredClone.

/** A track or route as it stands in the file. A missing elevation is NaN. */
export interface GpxLine {
  kind: 'track' | 'route'
  name: string
  /** The name is the file's own and no stand-in. */
  isNamed: boolean
  latDeg: Float64Array
  lonDeg: Float64Array
  eleM: Float64Array
  /** Index of the first point of each segment; a route is one segment. */
  segmentStarts: number[]
}

export interface GpxWaypoint {
  /** Empty where the file has none. */
  name: string
  latDeg: number
  lonDeg: number
}

export interface GpxFile {
  lines: GpxLine[]
  waypoints: GpxWaypoint[]
  /** What was left out on reading, in sentences. */
  notes: string[]
}

/** Something said about a file: what is wrong and how to mend it. */
export interface Refused {
  ok: false
  message: string
}

export type GpxRead = { ok: true; file: GpxFile } | Refused

/** One sample of the profile to draw; the elevation is null where the file has none. */
export interface ProfilePoint {
  km: number
  eleM: number | null
}

/** A waypoint where the track passes it: at this km, this far beside it. */
export interface Pass {
  /** Empty where the file has none. */
  name: string
  km: number
  besideM: number
}

/**
 * Sums along the track at even samples: sample i lies at `i × stepKm`, the last one at the track's end.
 * All start at 0. Climb stands still where the elevation is unknown; `unknownKm` counts those stretches.
 */
export interface Sums {
  ascentM: Float64Array
  descentM: Float64Array
  unknownKm: Float64Array
  /** Walking hours by the Swiss polynomial, unscaled: for shares of the way, not for the clock. */
  hours: Float64Array
}

export interface MeasuredTrack {
  kind: GpxLine['kind']
  name: string
  isNamed: boolean
  points: number
  km: number
  /** Jumps between segments: not walked, so they count neither as distance nor as climb. */
  gaps: { count: number; km: number }
  longestStepKm: number
  elevation: 'all' | 'part' | 'none'
  stepKm: number
  sums: Sums
  passes: Pass[]
  profile: ProfilePoint[]
}

export type GpxMeasured = { ok: true; tracks: MeasuredTrack[]; notes: string[] } | Refused
