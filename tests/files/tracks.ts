// Made-up tracks for the tests: straight north from 46° N 7° E, so that distances are known beforehand.

import type { GpxLine } from '../../src/files/gpx/types'

/** Metres of one degree of the meridian near 46° N, good to 0.1 %: 111 132.95 − 559.85 cos 2φ (from memory). */
const DEGREE_M = 111_152

/** Repeatable noise from −1 to 1 (mulberry32). */
export function noise(seed = 1): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 31 - 1
  }
}

export interface Course {
  km: number
  spacingM?: number
  /** Elevation at a distance from the start; NaN: none. */
  eleM?: (m: number) => number
}

/** A line of points as the reader makes it. */
export function lineOf({ km, spacingM = 10, eleM = () => 500 }: Course): GpxLine {
  const count = Math.round((km * 1000) / spacingM) + 1
  const each = (value: (m: number) => number) =>
    Float64Array.from({ length: count }, (_, i) => value(i * spacingM))
  return {
    kind: 'track',
    isNamed: true,
    name: 'Made up',
    latDeg: each(m => 46 + m / DEGREE_M),
    lonDeg: each(() => 7),
    eleM: each(eleM),
    segmentStarts: [0],
  }
}

/** Latitude a distance north of the start of `lineOf`. */
export const northOf = (m: number) => 46 + m / DEGREE_M

/** The text of a winding, hilly GPX 1.1 track. */
export function walk({
  points,
  spacingM,
  noiseM,
}: {
  points: number
  spacingM: number
  noiseM: number
}): string {
  const random = noise(7)
  const lines = Array.from({ length: points }, (_, i) => {
    const m = i * spacingM
    const ele = 1200 + 400 * Math.sin(m / 5000) + noiseM * random()
    return `<trkpt lat="${northOf(m).toFixed(7)}" lon="${(7 + 1e-3 * Math.sin(m / 300)).toFixed(7)}"><ele>${ele.toFixed(1)}</ele><time>2020-01-01T00:00:00Z</time></trkpt>`
  })
  return gpx(`<trk><name>Long walk</name><trkseg>${lines.join('\n')}</trkseg></trk>`)
}

export const gpx = (
  body: string,
  root = 'version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1"',
) => `<?xml version="1.0" encoding="UTF-8"?>\n<gpx ${root}>${body}</gpx>\n`

export const point = (lat: number | string, lon: number | string, inside = '') =>
  `<trkpt lat="${lat}" lon="${lon}">${inside}</trkpt>`

export const track = (...points: string[]) => `<trk><trkseg>${points.join('')}</trkseg></trk>`
