// Where a track passes the named points of its file. A point passed twice, out and back, is found twice.
// Flat-map geometry around the point: good to some metres in 200 m beside steps of a few km.

import type { GpxLine, GpxWaypoint, Pass } from './types'
import type { Walked } from './walked'

/** A waypoint this near belongs to the way; judgement of ours. */
export const BESIDE_M = 200
/** Coming near again after this much walking is another pass; judgement of ours. */
const AGAIN_KM = 1
/** Nobody plans to come by more often; a cap on what a made-up file can fill memory with. */
const MOST_PASSES = 20
/** Metres of one degree of latitude, rounded up: only a bound for skipping, and a scale good to 1 %. */
const DEGREE_M = 111_700

/** Across a longer step the way is not known: only its two ends are looked at. Judgement of ours. */
const LONG_STEP_KM = 100

/** A piece of the way: two places, and their km. One place twice stands for itself. */
interface Step {
  from: Place
  to: Place
  fromKm: number
  toKm: number
}

/** All passes in the order of the way. */
export function passesOf(line: GpxLine, walked: Walked, waypoints: readonly GpxWaypoint[]): Pass[] {
  const byLatitude = [...waypoints].sort((a, b) => a.latDeg - b.latDeg)
  const found = byLatitude.map((): Pass[] => [])
  const latReach = (1.02 * BESIDE_M) / DEGREE_M
  if (waypoints.length > 0)
    for (let i = 1; i < walked.km.length; i++) for (const step of stepsTo(i)) look(step)
  return found
    .flat()
    .map(({ name, km, besideM }) => ({ name, km, besideM }))
    .sort((a, b) => a.km - b.km)

  function stepsTo(i: number): Step[] {
    const from = placeOf(i - 1)
    const to = placeOf(i)
    const [fromKm, toKm] = [walked.km[i - 1]!, walked.km[i]!]
    if (toKm - fromKm <= LONG_STEP_KM && !walked.gapBefore.has(i)) return [{ from, to, fromKm, toKm }]
    return [
      { from, to: from, fromKm, toKm: fromKm },
      { from: to, to, fromKm: toKm, toKm },
    ]
  }

  function placeOf(i: number): Place {
    return { latDeg: line.latDeg[i]!, lonDeg: line.lonDeg[i]! }
  }

  function look({ from, to, fromKm, toKm }: Step) {
    const north = Math.max(from.latDeg, to.latDeg) + latReach
    const south = Math.min(from.latDeg, to.latDeg) - latReach
    // Twice the reach of a degree at the higher latitude: only to skip what is far off to the side.
    const shrink = Math.max(1e-6, Math.cos((Math.min(89.9, Math.max(north, -south)) * Math.PI) / 180))
    const lonReach = Math.abs(turn(to.lonDeg - from.lonDeg)) + (2 * latReach) / shrink
    for (let w = firstFrom(byLatitude, south); w < byLatitude.length; w++) {
      const waypoint = byLatitude[w]!
      if (waypoint.latDeg > north) break
      if (Math.abs(turn(waypoint.lonDeg - from.lonDeg)) > lonReach) continue
      const { besideM, share } = nearest(waypoint, from, to)
      if (besideM > BESIDE_M) continue
      note(found[w]!, { name: waypoint.name, besideM, km: fromKm + share * (toKm - fromKm) })
    }
  }
}

/** Keeps the nearest place of a pass; `lastKm` is where the track was near last. */
function note(passes: (Pass & { lastKm?: number })[], pass: Pass) {
  const last = passes.at(-1)
  if (!last || pass.km - (last.lastKm ?? last.km) > AGAIN_KM) {
    if (passes.length < MOST_PASSES) passes.push({ ...pass, lastKm: pass.km })
    return
  }
  last.lastKm = pass.km
  if (pass.besideM < last.besideM) Object.assign(last, pass)
}

interface Place {
  latDeg: number
  lonDeg: number
}

/** How far a place lies beside a step, and at which share of the step it is nearest. */
function nearest(place: Place, from: Place, to: Place): { besideM: number; share: number } {
  const eastM = DEGREE_M * Math.cos((place.latDeg * Math.PI) / 180)
  const x = turn(from.lonDeg - place.lonDeg) * eastM
  const y = (from.latDeg - place.latDeg) * DEGREE_M
  const dx = turn(to.lonDeg - from.lonDeg) * eastM
  const dy = (to.latDeg - from.latDeg) * DEGREE_M
  const length2 = dx * dx + dy * dy
  const share = length2 > 0 ? Math.min(1, Math.max(0, -(x * dx + y * dy) / length2)) : 0
  return { besideM: Math.hypot(x + share * dx, y + share * dy), share }
}

/** A difference of longitudes the short way round, also across the date line. */
const turn = (degrees: number) => degrees - 360 * Math.round(degrees / 360)

function firstFrom(sorted: GpxWaypoint[], latDeg: number): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]!.latDeg < latDeg) low = middle + 1
    else high = middle
  }
  return low
}
