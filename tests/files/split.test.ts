// The stops proposed along a track, and what becomes of them in a trip.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { asChosen, dayHours, keptStops, overLong, toDraftStops } from '../../src/files/gpx/add-to-plan'
import { hoursOf } from '../../src/files/gpx/legs'
import { trackNotes } from '../../src/files/gpx/notes'
import { type Proposal, proposeStops, type SplitBy } from '../../src/files/gpx/split'
import { measureTrack } from '../../src/files/gpx/track'
import { CAPS, defaults } from '../../src/plan'
import { formatsIn } from '../../src/report'
import { type Course, lineOf, northOf } from './tracks'

const place = (name: string, m: number) => ({ name, latDeg: northOf(m), lonDeg: 7 })
const tracked = (course: Course, places: [string, number][] = []) =>
  measureTrack(
    lineOf(course),
    places.map(([name, m]) => place(name, m)),
  )

function proposed(track: ReturnType<typeof tracked>, split: SplitBy): Proposal {
  const made = proposeStops(track, split, defaults.PACE)
  if (!made.ok) throw new Error(made.message)
  return made
}

const days = (count: number): SplitBy => ({ by: 'days', days: count })
let ids = 0
const newId = () => `id${ids++}`

describe('days', () => {
  it('on an even way are even in distance: 30 km in 3 days camp at 10 and 20 km', () => {
    const { stops } = proposed(tracked({ km: 30 }), days(3))
    expect(stops.map(({ name, nights }) => [name, nights])).toEqual([
      ['Start', 0],
      ['Camp 1', 1],
      ['Camp 2', 1],
      ['End', 0],
    ])
    expect(stops[1]!.km).toBeCloseTo(10, 1)
    expect(stops[2]!.km).toBeCloseTo(20, 1)
  })

  it('are even in walking time: the half that climbs gets the shorter day', () => {
    const track = tracked({ km: 20, eleM: m => 500 + Math.max(0, m - 10_000) / 8 })
    const camp = proposed(track, days(2)).stops[1]!
    expect(camp.km).toBeGreaterThan(11)
    expect(camp.km).toBeLessThan(15)
  })

  it('come from hours a day: 12 km on the flat at 4 km/h are 3 h, so 1.5 h a day make 2 days', () => {
    const made = proposed(tracked({ km: 12 }), { by: 'hours', hours: 1.51 })
    expect(made.days).toBe(2)
    expect(made.hoursADay).toBeCloseTo(1.5, 2)
    expect(proposed(tracked({ km: 12 }), { by: 'hours', hours: 1.4 }).days).toBe(3)
  })

  it('from hours a day are never longer than asked before camps move, however the way climbs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 12, noNaN: true }),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 0, max: 400 }),
        (hours, km, heightM) => {
          const eleM = (m: number) => 1000 + heightM * Math.sin(m / 900) * Math.sin(m / 7100)
          const track = tracked({ km, spacingM: 50, eleM })
          const made = proposed(track, { by: 'hours', hours })
          const lengths = dayHours(keptStops(track, asChosen(made.stops)), defaults.PACE)
          expect(lengths).toHaveLength(made.days)
          expect(Math.max(...lengths)).toBeLessThanOrEqual(hours * (1 + 1e-5))
        },
      ),
      { numRuns: 60 },
    )
  })

  it('out of range are refused with the limit', () => {
    const track = tracked({ km: 12 })
    const message = (split: SplitBy) => proposeStops(track, split, defaults.PACE)
    for (const count of [0, -1, 2.5, 402, Number.NaN])
      expect(message(days(count))).toMatchObject({ ok: false, message: expect.stringContaining('1 to 401') })
    expect(message({ by: 'hours', hours: 0.4 })).toMatchObject({
      message: expect.stringContaining('0.5 to 24 h'),
    })
    const long = tracked({ km: 3000, spacingM: 1000 })
    expect(proposeStops(long, { by: 'hours', hours: 0.5 }, defaults.PACE)).toMatchObject({
      message: expect.stringContaining('up to 401'),
    })
  })

  it('need a way: a track of 0 km is refused', () => {
    const still = { ...tracked({ km: 1 }), km: 0 }
    expect(proposeStops(still, days(1), defaults.PACE)).toMatchObject({
      ok: false,
      message: expect.stringContaining('0 km'),
    })
  })
})

describe('waypoints', () => {
  it('become stops in the order of the way, and name the ends they lie at', () => {
    const track = tracked({ km: 10 }, [
      ['Pass', 6000],
      ['Trailhead', 50],
      ['Village', 9950],
      ['Hut', 2000],
    ])
    expect(proposed(track, days(1)).stops.map(stop => stop.name)).toEqual([
      'Trailhead',
      'Hut',
      'Pass',
      'Village',
    ])
  })

  it('within 2 km take the night; farther ones and those without a name do not', () => {
    const near = proposed(tracked({ km: 20 }, [['Hut', 11_900]]), days(2)).stops
    expect(near.map(({ name, nights }) => [name, nights])).toEqual([
      ['Start', 0],
      ['Hut', 1],
      ['End', 0],
    ])
    const far = proposed(tracked({ km: 20 }, [['Hut', 12_100]]), days(2)).stops
    expect(far.map(({ name, nights }) => [name, nights])).toEqual([
      ['Start', 0],
      ['Camp 1', 1],
      ['Hut', 0],
      ['End', 0],
    ])
    const unnamed = proposed(tracked({ km: 20 }, [['', 10_500]]), days(2)).stops
    expect(unnamed.map(({ name, nights }) => [name, nights])).toEqual([
      ['Start', 0],
      ['Camp 1', 1],
      ['Waypoint', 0],
      ['End', 0],
    ])
  })

  it('are never a water source: a name that sounds like one makes it doubtful, all else none', () => {
    const { stops } = proposed(
      tracked({ km: 10 }, [
        ['Cold Spring', 3000],
        ['Hut', 6000],
      ]),
      days(1),
    )
    expect(stops.map(stop => stop.water)).toEqual(['none', 'doubtful', 'none', 'none'])
  })

  it('too many for a trip are left out and counted', () => {
    const many = Array.from({ length: CAPS.stops + 10 }, (_, i): [string, number] => [`W${i}`, 1000 + 20 * i])
    const made = proposed(tracked({ km: 20 }, many), days(1))
    expect(made.stops).toHaveLength(CAPS.stops)
    expect(made.leftOut).toBe(12)
  })
})

describe('every proposal', () => {
  it('runs from 0 to the end in order, with as many nights as days less one and distinct keys', () => {
    const places = fc.array(
      fc.tuple(fc.constantFrom('Hut', 'Well', 'Pass'), fc.integer({ min: 0, max: 30_000 })),
      { maxLength: 12 },
    )
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 40 }), (waypoints, count) => {
        const track = tracked({ km: 30, spacingM: 50, eleM: m => 500 + (m % 5000) / 10 }, waypoints)
        const { stops } = proposed(track, days(count))
        expect(stops[0]!.km).toBe(0)
        expect(stops.at(-1)!.km).toBe(track.km)
        for (let i = 1; i < stops.length; i++) expect(stops[i]!.km).toBeGreaterThanOrEqual(stops[i - 1]!.km)
        expect(stops.filter(stop => stop.nights === 1)).toHaveLength(count - 1)
        expect(new Set(stops.map(stop => stop.key)).size).toBe(stops.length)
      }),
      { numRuns: 60 },
    )
  })
})

describe('legs', () => {
  const hills = tracked({ km: 24, eleM: m => 800 - 150 * Math.cos((2 * Math.PI * m) / 6000) }, [
    ['A', 5000],
    ['B', 14_000],
  ])

  it('add up to the track in distance, climb and descent, whatever is dropped', () => {
    const chosen = asChosen(proposed(hills, days(3)).stops)
    const total = (stops: typeof chosen, field: 'km' | 'ascentM' | 'descentM') =>
      keptStops(hills, stops).reduce((sum, stop) => sum + (stop.leg?.[field] ?? 0), 0)
    const fewer = chosen.map(stop => ({ ...stop, kept: stop.name !== 'A' && stop.name !== 'Camp 2' }))
    for (const stops of [chosen, fewer]) {
      expect(total(stops, 'km')).toBeCloseTo(hills.km, 9)
      expect(total(stops, 'ascentM')).toBeCloseTo(hills.sums.ascentM.at(-1)!, 6)
      expect(total(stops, 'descentM')).toBeCloseTo(hills.sums.descentM.at(-1)!, 6)
    }
    expect(keptStops(hills, fewer).length).toBeLessThan(chosen.length)
  })

  it('without elevation have no climb at all; with a part of it say how much is missing', () => {
    const none = tracked({ km: 10, eleM: () => Number.NaN })
    expect(keptStops(none, asChosen(proposed(none, days(1)).stops))[1]!.leg).toMatchObject({
      ascentM: null,
      descentM: null,
    })
    const part = tracked({ km: 10, eleM: m => (m > 2000 && m < 4000 ? Number.NaN : 500 + m / 20) }, [
      ['Mid', 5000],
    ])
    const [, first, second] = keptStops(part, asChosen(proposed(part, days(1)).stops))
    expect(first!.leg!.unknownKm).toBeCloseTo(2, 1)
    expect(first!.leg!.ascentM).toBeLessThan(170)
    expect(second!.leg!.unknownKm).toBe(0)
    expect(trackNotes(part, formatsIn('metric'))[0]).toMatch(/^Elevation is missing on 2\.0\skm/)
    expect(trackNotes(none, formatsIn('metric'))).toEqual([
      'No elevation in this file: climb and descent are left empty.',
    ])
  })

  it('longer than a trip can hold are named', () => {
    const long = tracked({ km: 1200, spacingM: 1000 })
    expect(overLong(keptStops(long, asChosen(proposed(long, days(1)).stops)))).toEqual({
      name: 'End',
      field: 'km',
    })
    expect(overLong(keptStops(long, asChosen(proposed(long, days(3)).stops)))).toBeNull()
  })

  it('take the hours of the trip’s own blend, also where one leg could not hold the way', () => {
    expect(hoursOf({ km: 8, ascentM: 900, descentM: 0 }, defaults.PACE)).toBeCloseTo(4, 9)
    expect(hoursOf({ km: 4000, ascentM: 90_000, descentM: 0 }, defaults.PACE)).toBeCloseTo(
      1000 + 300 - Math.min(1000, 300) / 2,
      6,
    )
  })
})

describe('stops of a trip', () => {
  it('carry only what is known, rounded to 10 m and 1 m', () => {
    const track = tracked({ km: 10, eleM: m => 500 + m / 20 }, [['Hut', 4000]])
    const chosen = asChosen(proposed(track, days(1)).stops).map(stop =>
      stop.name === 'Hut' ? { ...stop, water: 'sure' as const, nights: 2, resupply: true } : stop,
    )
    const stops = toDraftStops(keptStops(track, chosen), newId)
    expect(stops[0]).toEqual({ id: expect.any(String), name: 'Start', water: 'none' })
    expect(stops[1]).toEqual({
      id: expect.any(String),
      name: 'Hut',
      water: 'sure',
      nights: 2,
      resupply: true,
      leg: { km: expect.closeTo(4, 1), ascentM: expect.closeTo(200, -1), descentM: 0 },
    })
    expect(Number.isInteger(stops[1]!.leg!.ascentM)).toBe(true)
    expect(new Set(stops.map(stop => stop.id)).size).toBe(3)
  })

  it('leave climb out where the file has none', () => {
    const track = tracked({ km: 10, eleM: () => Number.NaN })
    const stops = toDraftStops(keptStops(track, asChosen(proposed(track, days(1)).stops)), newId)
    expect(Object.keys(stops[1]!.leg!)).toEqual(['km'])
  })

  it('keep what was said of a waypoint when the way is split anew, and nothing of a camp', () => {
    const track = tracked({ km: 30 }, [['Hut', 5000]])
    const before = asChosen(proposed(track, days(3)).stops).map(stop => ({
      ...stop,
      name: `My ${stop.name}`,
      water: 'sure' as const,
    }))
    const after = asChosen(proposed(track, days(4)).stops, before)
    expect(after.map(stop => stop.name)).toEqual([
      'My Start',
      'My Hut',
      'Camp 1',
      'Camp 2',
      'Camp 3',
      'My End',
    ])
  })
})
