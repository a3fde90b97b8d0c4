// A track measured: distance, climb that noise does not feed, missing elevation, profile and passed waypoints.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { geodesicKm } from '../../src/files/gpx/distance'
import { MOST_PROFILE_POINTS } from '../../src/files/gpx/profile'
import { measureTrack } from '../../src/files/gpx/track'
import type { GpxLine, MeasuredTrack } from '../../src/files/gpx/types'
import { type Course, lineOf, noise, northOf } from './tracks'

const measured = (course: Course) => measureTrack(lineOf(course))
const upM = ({ sums }: MeasuredTrack) => sums.ascentM.at(-1)!
const downM = ({ sums }: MeasuredTrack) => sums.descentM.at(-1)!
const noisy = (seed: number, eleM: (m: number) => number) => {
  const random = noise(seed)
  return (m: number) => eleM(m) + 5 * random()
}

describe('distance', () => {
  it('is the sum of the steps on the ellipsoid', () => {
    const line: GpxLine = {
      kind: 'route',
      isNamed: true,
      name: 'Far',
      latDeg: Float64Array.of(46, 46.3, 46.1),
      lonDeg: Float64Array.of(7, 7.2, 7.9),
      eleM: new Float64Array(3).fill(Number.NaN),
      segmentStarts: [0],
    }
    const at = (i: number) => ({ latDeg: line.latDeg[i]!, lonDeg: line.lonDeg[i]! })
    expect(measureTrack(line).km).toBeCloseTo(geodesicKm(at(0), at(1)) + geodesicKm(at(1), at(2)), 9)
    expect(measured({ km: 20 }).km).toBeCloseTo(20, 2)
  })

  it('does not walk a jump between segments, nor climb it, and tells how far it is', () => {
    const line = lineOf({ km: 10, eleM: m => (m < 4000 ? 500 : 1500) })
    const from = Math.ceil(4000 / 10)
    line.segmentStarts = [0, from + 100]
    // The points in between go, so that the second segment begins 1 km after the end of the first.
    const without = (all: Float64Array) =>
      Float64Array.from([...all.slice(0, from), ...all.slice(from + 100)])
    const gapped = {
      ...line,
      latDeg: without(line.latDeg),
      lonDeg: without(line.lonDeg),
      eleM: without(line.eleM),
      segmentStarts: [0, from],
    }
    const track = measureTrack(gapped)
    expect(track.gaps).toEqual({ count: 1, km: expect.closeTo(1.01, 2) })
    expect(track.km).toBeCloseTo(10 - 1.01, 1)
    expect(upM(track)).toBe(0)
    expect(track.elevation).toBe('all')
  })

  it('joins segments whose ends lie within 100 m: the recorder only paused', () => {
    const track = measureTrack({ ...lineOf({ km: 2 }), segmentStarts: [0, 50, 120] })
    expect(track.gaps.count).toBe(0)
    expect(track.km).toBeCloseTo(2, 2)
  })
})

describe('climb', () => {
  it('stays under 3 m a kilometre on a flat track with ±5 m of noise, at any usual spacing', () => {
    for (const spacingM of [2, 5, 10, 20, 50, 100]) {
      const track = measured({ km: 30, spacingM, eleM: noisy(spacingM, () => 800) })
      expect(upM(track) / 30, `${spacingM} m`).toBeLessThan(3)
      expect(downM(track) / 30, `${spacingM} m`).toBeLessThan(3)
    }
  })

  it('is 1000 m ± 3 % for a climb of 1000 m with ±5 m of noise', () => {
    for (const spacingM of [2, 10, 50, 100]) {
      const track = measured({ km: 8, spacingM, eleM: noisy(spacingM + 9, m => 500 + m / 8) })
      expect(Math.abs(upM(track) - 1000), `${spacingM} m`).toBeLessThan(30)
      expect(downM(track), `${spacingM} m`).toBeLessThan(15)
    }
  })

  it('counts both sides of hills: four of 200 m make 800 m up and down', () => {
    const track = measured({ km: 16, eleM: noisy(3, m => 600 - 100 * Math.cos((2 * Math.PI * m) / 4000)) })
    expect(Math.abs(upM(track) - 800)).toBeLessThan(24)
    expect(Math.abs(downM(track) - 800)).toBeLessThan(24)
  })

  it('of any profile never decreases along the way, and up less down is the height between the ends', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 2, maxLength: 60 }), heights => {
        const eleM = (m: number) => heights[Math.min(heights.length - 1, Math.round(m / 300))]!
        const track = measured({ km: (heights.length - 1) * 0.3, spacingM: 100, eleM })
        const { ascentM, descentM, hours } = track.sums
        for (const sums of [ascentM, descentM, hours])
          for (let i = 1; i < sums.length; i++) expect(sums[i]!).toBeGreaterThanOrEqual(sums[i - 1]!)
        // What lies before the first and after the last counted swing is under the threshold at each end.
        expect(Math.abs(upM(track) - downM(track) - (heights.at(-1)! - heights[0]!))).toBeLessThanOrEqual(10)
      }),
      { numRuns: 60 },
    )
  })
})

describe('missing elevation', () => {
  it('throughout: nothing is climbed, and it is said', () => {
    const track = measured({ km: 3, eleM: () => Number.NaN })
    expect(track.elevation).toBe('none')
    expect(upM(track)).toBe(0)
    expect(track.sums.unknownKm.at(-1)).toBeCloseTo(3, 1)
    expect(track.profile.every(point => point.eleM === null)).toBe(true)
  })

  it('on a stretch: its length is told, and the height across it is not climbed', () => {
    const eleM = (m: number) => (m < 2000 ? 500 : m < 3000 ? Number.NaN : 900)
    const track = measured({ km: 5, eleM })
    expect(track.elevation).toBe('part')
    expect(track.sums.unknownKm.at(-1)).toBeCloseTo(1, 1)
    expect(upM(track)).toBe(0)
  })

  it('of single points is bridged up to 200 m', () => {
    const track = measured({ km: 4.5, eleM: m => (m % 180 === 0 ? 500 + m / 10 : Number.NaN) })
    expect(track.elevation).toBe('all')
    expect(upM(track)).toBeCloseTo(450, 0)
  })
})

describe('the profile to draw', () => {
  it('has at most 400 points in order, both ends, and keeps the summit and the deepest valley', () => {
    const peak = (m: number) =>
      1000 + 900 * Math.exp(-(((m - 23_456) / 400) ** 2)) - 700 * Math.exp(-(((m - 61_234) / 400) ** 2))
    const { profile, km } = measured({ km: 100, eleM: peak })
    expect(profile.length).toBeLessThanOrEqual(MOST_PROFILE_POINTS)
    expect(profile.length).toBeGreaterThan(200)
    expect(profile[0]!.km).toBe(0)
    expect(profile.at(-1)!.km).toBeCloseTo(km, 9)
    for (let i = 1; i < profile.length; i++) expect(profile[i]!.km).toBeGreaterThan(profile[i - 1]!.km)
    const heights = profile.map(point => point.eleM!)
    // The moving average takes some metres off a summit this sharp.
    expect(Math.max(...heights)).toBeGreaterThan(1870)
    expect(Math.min(...heights)).toBeLessThan(330)
  })

  it('of a short track has every sample', () => {
    expect(measured({ km: 1 }).profile).toHaveLength(51)
  })
})

describe('waypoints by the way', () => {
  const passes = (line: GpxLine, ...places: [string, number, number][]) =>
    measureTrack(
      line,
      places.map(([name, latDeg, lonDeg]) => ({ name, latDeg, lonDeg })),
    ).passes

  it('within 200 m are found at their km in order, others are not', () => {
    // One degree of longitude is 77.5 km here: 0.0024° are 186 m, 0.0028° are 217 m.
    const found = passes(
      lineOf({ km: 10 }),
      ['Late', northOf(8000), 7.0024],
      ['Early', northOf(3000), 6.9999],
      ['Aside', northOf(5000), 7.0028],
    )
    expect(found.map(pass => pass.name)).toEqual(['Early', 'Late'])
    expect(found[0]!.km).toBeCloseTo(3, 2)
    expect(found[1]!.km).toBeCloseTo(8, 2)
    expect(found[1]!.besideM).toBeGreaterThan(180)
  })

  it('are found between points that lie far apart', () => {
    expect(passes(lineOf({ km: 10, spacingM: 5000 }), ['Between', northOf(2500), 7.001])[0]!.km).toBeCloseTo(
      2.5,
      2,
    )
  })

  it('are passed twice on a way out and back, and once where the track only dawdles', () => {
    const out = lineOf({ km: 5 })
    const thereAndBack = (all: Float64Array) => Float64Array.from([...all, ...[...all].reverse()])
    const line = {
      ...out,
      latDeg: thereAndBack(out.latDeg),
      lonDeg: thereAndBack(out.lonDeg),
      eleM: thereAndBack(out.eleM),
    }
    const found = passes(line, ['Hut', northOf(2000), 7], ['Turn', northOf(5000), 7])
    expect(found.map(({ name, km }) => [name, Math.round(km)])).toEqual([
      ['Hut', 2],
      ['Turn', 5],
      ['Hut', 8],
    ])
  })

  it('are found across the date line', () => {
    const line = {
      ...lineOf({ km: 1 }),
      latDeg: Float64Array.of(0, 0),
      lonDeg: Float64Array.of(179.9, -179.9),
      eleM: Float64Array.of(0, 0),
    }
    expect(passes(line, ['Line', 0, 180])[0]!.km).toBeCloseTo(11.1, 1)
  })
})

it('a track without length measures 0 km and fails nowhere', () => {
  const track = measured({ km: 0.01, spacingM: 10 })
  expect(track.km).toBeCloseTo(0.01, 4)
  const still = measureTrack({
    ...lineOf({ km: 0.05 }),
    latDeg: new Float64Array(6).fill(46),
    lonDeg: new Float64Array(6).fill(7),
    eleM: new Float64Array(6).fill(1),
  })
  expect(still).toMatchObject({ km: 0, elevation: 'all' })
})
