// A track measured: distance, climb, descent and walking hours along it, its profile and the waypoints it passes.

import { swissMinPerKm } from '../../equations'
import { climbAlong } from './climb'
import { passesOf } from './passes'
import { simpleProfile } from './profile'
import { evenElevation } from './resample'
import type { GpxFile, GpxLine, GpxMeasured, GpxWaypoint, MeasuredTrack, Sums } from './types'
import { walkedAlong } from './walked'

/** Every track and route of a file, measured. */
export function measureFile({ lines, waypoints, notes }: GpxFile): GpxMeasured {
  return { ok: true, tracks: lines.map(line => measureTrack(line, waypoints)), notes }
}

/**
 * Measures one track. Distances in km on the ellipsoid, heights not counted; climb in m after smoothing (see
 * climb.ts). Where the elevation is unknown nothing is counted, and `sums.unknownKm` says how far that goes.
 */
export function measureTrack(line: GpxLine, waypoints: readonly GpxWaypoint[] = []): MeasuredTrack {
  const walked = walkedAlong(line)
  const km = walked.km.at(-1) ?? 0
  const even = evenElevation(line, walked)
  const climb = climbAlong(even)
  const sums = { ...climb, ...alongSteps(climb.eleM, { ...even, km }) }
  return {
    kind: line.kind,
    name: line.name,
    isNamed: line.isNamed,
    points: line.latDeg.length,
    km,
    gaps: { count: walked.gapBefore.size, km: walked.gapKm },
    longestStepKm: walked.longestStepKm,
    elevation: known(climb.eleM),
    stepKm: even.stepKm,
    sums: pick(sums),
    passes: passesOf(line, walked, waypoints),
    profile: simpleProfile(climb.eleM, { stepKm: even.stepKm, km }),
  }
}

interface Steps {
  stepKm: number
  km: number
  breakBefore: Set<number>
}

/** Hours and unknown kilometres from the start to each sample. An unknown step is timed as flat. */
function alongSteps(eleM: Float64Array, { stepKm, km, breakBefore }: Steps) {
  const hours = new Float64Array(eleM.length)
  const unknownKm = new Float64Array(eleM.length)
  for (let i = 1; i < eleM.length; i++) {
    const runKm = Math.min(i * stepKm, km) - Math.min((i - 1) * stepKm, km)
    const riseM = eleM[i]! - eleM[i - 1]!
    const isKnown = !Number.isNaN(riseM) && !breakBefore.has(i) && runKm > 0
    // Steeper than 100 % is a fault of the recording: nobody walks it.
    const slope = isKnown ? Math.min(1, Math.max(-1, riseM / (1000 * runKm))) : 0
    const pace = swissMinPerKm({ slope })
    if (!pace.ok) throw new RangeError(`no walking time for the slope ${slope}`)
    hours[i] = hours[i - 1]! + (runKm * pace.value) / 60
    unknownKm[i] = unknownKm[i - 1]! + (Number.isNaN(riseM) ? runKm : 0)
  }
  return { hours, unknownKm }
}

function known(eleM: Float64Array): MeasuredTrack['elevation'] {
  const missing = eleM.reduce((count, value) => count + (Number.isNaN(value) ? 1 : 0), 0)
  return missing === 0 ? 'all' : missing === eleM.length ? 'none' : 'part'
}

const pick = ({ ascentM, descentM, unknownKm, hours }: Sums): Sums => ({
  ascentM,
  descentM,
  unknownKm,
  hours,
})
