// The terrain under the load line: a silhouette on the same km axis with a scale of its own. Pure: km and m in, px out.
// The track's length and the trip's differ by a little (legs are rounded, or corrected): the terrain is stretched to
// the trip, so that both end at the same place.

import type { ProfilePoint, WayPicture } from './load-picture'
import { alongOf } from './route-line'
import { clamp } from './scale'
import { metresText } from './words'

export interface Dot {
  x: number
  y: number
}

export interface Terrain {
  top: number
  bottom: number
  /** The ridge between gaps, each run of at least two points. */
  runs: Dot[][]
  /** What is between runs, along the bottom. */
  gaps: { from: number; to: number }[]
  /** y of the ridge at each stop; null in a gap. */
  stopYs: (number | null)[]
  /** The scale at the side, highest first; one label where the ground is level. */
  labels: { y: number; text: string }[]
  /** The scale in one line above, where the type is too large for the side. */
  above: { y: number; text: string } | null
}

/** Ground with less relief than this is not blown up to the whole height, m. A judgement of ours. */
const LEAST_SPAN_M = 100
/** Room between the lowest point and the base, as a share of the height: the silhouette always has a body. */
const BASE_SHARE = 0.18

/** Whether there is ground to draw: two known points or more, and a trip measured in km. */
export function hasTerrain({ profile, moments }: Pick<WayPicture, 'profile' | 'moments'>): boolean {
  return knownIn(profile ?? []).length > 1 && alongOf(moments) === 'km'
}

/** Stops whose way differs by more than this from the track's are not those of the track. */
const MOST_DIFFERENCE = 0.02

/** Whether a trip of so many km still goes along the track of a terrain, by length alone. */
export function fitsTrack(profile: readonly ProfilePoint[], tripKm: number): boolean {
  const trackKm = profile.at(-1)?.km ?? 0
  return trackKm > 0 && Math.abs(tripKm - trackKm) <= MOST_DIFFERENCE * trackKm
}

const knownIn = (profile: readonly ProfilePoint[]): number[] =>
  profile.flatMap(({ eleM }) => (eleM === null ? [] : [eleM]))

/** Lowest and highest known elevation, m; null where none is known. */
export function rangeOf(profile: readonly ProfilePoint[]): { lowM: number; highM: number } | null {
  const known = knownIn(profile)
  return known.length > 0 ? { lowM: Math.min(...known), highM: Math.max(...known) } : null
}

/** Elevation at a km of the trip, straight between points; null in a gap, or where no terrain is known. */
export function elevationAt(km: number, { profile = [], moments }: Pick<WayPicture, 'profile' | 'moments'>) {
  const end = profile.at(-1)?.km ?? 0
  const tripKm = moments.at(-1)?.km ?? 0
  if (!(end > 0) || !(tripKm > 0)) return null
  const at = clamp((km / tripKm) * end, 0, end)
  const after = profile.findIndex(point => point.km >= at)
  const high = profile[after]
  const low = profile[after - 1] ?? high
  if (!low || !high || high.eleM === null) return null
  // On a point that is known, whatever lies beside it.
  if (high.km - at <= 1e-9 * end) return high.eleM
  if (low.eleM === null) return null
  return low.eleM + ((at - low.km) / (high.km - low.km)) * (high.eleM - low.eleM)
}

/** Elevation at each stop, m. */
export function stopElevations(shown: WayPicture): (number | null)[] {
  return shown.stops.map((_, stop) => {
    const moment = shown.moments.find(m => m.stop === stop)
    return moment ? elevationAt(moment.km, shown) : null
  })
}

/** What the scale at its side says. */
export function terrainFigures(shown: WayPicture): string[] {
  const range = hasTerrain(shown) ? rangeOf(shown.profile ?? []) : null
  return range ? [range.lowM, range.highM].map(m => metresText(m, shown.format)) : []
}

export interface TerrainRoom {
  left: number
  right: number
  top: number
  linePx: number
  /** Figures stand at the side. */
  ruled: boolean
}

/** Lays the terrain out below `top`; null where there is none to draw. */
export function layTerrain(
  shown: WayPicture,
  { left, right, linePx, ruled, ...room }: TerrainRoom,
): Terrain | null {
  const { profile = [], format } = shown
  const range = hasTerrain(shown) ? rangeOf(profile) : null
  if (!range) return null
  const { lowM, highM } = range
  const height = clamp((right - left) * 0.2, Math.max(60, linePx * 2.6), 96)
  const top = room.top + (ruled ? 0 : linePx * 1.6)
  const bottom = top + height
  const spanM = Math.max(highM - lowM, LEAST_SPAN_M)
  const yOf = (eleM: number) => bottom - height * (BASE_SHARE + (1 - BASE_SHARE) * ((eleM - lowM) / spanM))
  const endKm = profile.at(-1)!.km
  const xOf = (km: number) => left + (km / endKm) * (right - left)
  const runs = runsOf(profile).map(run => run.map(({ km, eleM }) => ({ x: xOf(km), y: yOf(eleM!) })))
  const metres = (m: number) => metresText(m, format)
  const [low, high] = [metres(lowM), metres(highM)]
  const labels = [{ y: yOf(highM), text: high }]
  // Where the relief is small the two figures would lie over each other: they are moved apart.
  if (low !== high) labels.push({ y: Math.max(yOf(lowM), yOf(highM) + linePx), text: low })
  return {
    top,
    bottom,
    runs,
    gaps: gapsBetween(runs, { left, right }),
    stopYs: stopElevations(shown).map(eleM => (eleM === null ? null : yOf(eleM))),
    labels: ruled ? labels : [],
    above: ruled ? null : { y: room.top + linePx * 0.3, text: low === high ? low : `${low} to ${high}` },
  }
}

/** The stretches without a missing elevation. A known point alone between gaps is no ground. */
function runsOf(profile: readonly ProfilePoint[]): ProfilePoint[][] {
  const runs: ProfilePoint[][] = [[]]
  for (const point of profile) {
    if (point.eleM === null) runs.push([])
    else runs.at(-1)!.push(point)
  }
  return runs.filter(run => run.length > 1)
}

function gapsBetween(runs: Dot[][], { left, right }: { left: number; right: number }) {
  const edges = [left, ...runs.flatMap(run => [run[0]!.x, run.at(-1)!.x]), right]
  const gaps: Terrain['gaps'] = []
  for (let i = 0; i + 1 < edges.length; i += 2) {
    const [from, to] = [edges[i]!, edges[i + 1]!]
    if (to - from > 0.5) gaps.push({ from, to })
  }
  return gaps
}
