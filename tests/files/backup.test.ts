import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  backupName,
  backupPieces,
  backupText,
  type Contents,
  canonical,
  compareBackup,
  restored,
  sameTrip,
  type Wishes,
} from '../../src/files/backup'
import { cleanWords } from '../../src/plan'
import { SHELF_LISTS } from '../../src/plan/shelf'
import { wholeDraft } from '../plan/drafts'
import { anyContents, empty, opened } from './backups'

const DAY = '2026-11-25'
const merge: Wishes = { how: 'merge', trips: {}, shelf: 'both' }
const replace: Wishes = { ...merge, how: 'replace' }
let ids = 0
const newId = () => `new${++ids}`
const plain = (contents: Contents) => canonical(cleanWords(contents))

const tripOf = (id: string, name: string, changedAt = 1): Contents['trips'][number] => ({
  format: 'pack-reckoner/trip',
  version: 5,
  id,
  demo: false,
  changedAt,
  draft: { ...wholeDraft(), name, packs: [] },
  typed: {},
})
const withTrips = (...trips: Contents['trips']): Contents => ({ ...empty(), trips })
const names = ({ trips }: Contents) => trips.map(({ draft }) => draft.name)

describe('a backup', () => {
  test('is written piece by piece as it would be in one go', () => {
    fc.assert(
      fc.property(anyContents, ({ trips, shelf, settings }) => {
        const head = { format: 'pack-reckoner/backup', version: 4, savedOn: DAY }
        const whole = {
          ...head,
          settings,
          trips,
          shelf: { format: 'pack-reckoner/shelf', version: 3, ...shelf },
        }
        expect(backupText({ trips, shelf, settings }, DAY)).toBe(`${canonical(cleanWords(whole), 1)}\n`)
      }),
      { numRuns: 300 },
    )
  })

  test('of long lists is written in many short pieces', () => {
    const gear = Array.from({ length: 3000 }, (_, i) => ({ id: `i${i}`, name: `Thing ${i}` }))
    const trip = tripOf('a', 'Long')
    const pieces = [...backupPieces(withTrips({ ...trip, draft: { ...trip.draft, gear } }), DAY)]
    expect(Math.max(...pieces.map(({ length }) => length))).toBeLessThan(1000)
  })

  test('saved, taken in where nothing is, and saved again is the same to the byte', () => {
    fc.assert(
      fc.property(anyContents, fc.constantFrom(merge, replace), (contents, wishes) => {
        const text = backupText(contents, DAY)
        const file = opened(text)
        expect(file.leftOut).toEqual([])
        expect(backupText(restored(empty(), file, wishes, newId), DAY)).toBe(text)
      }),
      { numRuns: 1000 },
    )
  }, 300_000)

  test('is the same text whatever the order in which the keys were made', () => {
    const shuffled = fc.property(anyContents, contents => {
      const turned = JSON.parse(JSON.stringify(contents), (_, value) =>
        value !== null && typeof value === 'object' && !Array.isArray(value)
          ? Object.fromEntries(Object.entries(value).reverse())
          : value,
      )
      expect(backupText(turned, DAY)).toBe(backupText(contents, DAY))
    })
    fc.assert(shuffled, { numRuns: 100 })
  })

  test('leaves out one pack of too many set-ups, says so, and keeps the others', () => {
    const packOf = (name: string, setups: number) => ({
      id: name,
      name,
      setups: Array.from({ length: setups }, (_, i) => ({ id: `${name} ${i}` })),
    })
    const packs = [packOf('One', 1), packOf('Many', 30), packOf('Two', 2)]
    const read = opened(backupText({ ...empty(), shelf: { ...empty().shelf, packs } }, DAY))
    expect(read.shelf?.packs.map(({ name }) => name)).toEqual(['One', 'Two'])
    expect(read.leftOut).toEqual(['Pack 2 “Many” is damaged (setups): it is left out.'])
  })

  test('is named by its day and carries no other date of the device', () => {
    expect(backupName(DAY)).toBe('pack-reckoner-2026-11-25.json')
    expect(Object.keys(JSON.parse(backupText(empty(), DAY)))).toEqual([
      'format',
      'savedOn',
      'settings',
      'shelf',
      'trips',
      'version',
    ])
  })
})

describe('two trips', () => {
  test('are the same exactly where a backup has the same text of them', () => {
    const textOf = ({ draft, typed, profile, demo }: Contents['trips'][number]) =>
      canonical(cleanWords({ draft, typed, profile, demo }))
    const strange = (text: string) => `${text}\u202e`
    const changes: ((trip: Contents['trips'][number]) => Contents['trips'][number])[] = [
      trip => structuredClone(trip),
      trip => ({ ...trip, changedAt: 7 }),
      trip => ({ ...trip, demo: !trip.demo }),
      trip => ({ ...trip, draft: { ...trip.draft, name: strange(trip.draft.name ?? '') } }),
      trip => ({ ...trip, draft: { ...trip.draft, gear: trip.draft.gear.slice(1) } }),
      trip => ({ ...trip, draft: { ...trip.draft, carrier: { ...trip.draft.carrier, massKg: -0 } } }),
      trip => ({ ...trip, typed: { ...trip.typed, x: 'a\nb' } }),
      trip => ({ ...trip, profile: [{ km: Number.NaN, eleM: null }] }),
      trip => ({ ...trip, profile: [{ km: null as unknown as number, eleM: null }] }),
    ]
    const change = fc.constantFrom(...changes)
    fc.assert(
      fc.property(anyContents, change, change, ({ trips }, one, other) => {
        for (const trip of trips) {
          const [a, b] = [one(trip), other(trip)]
          expect(sameTrip(a, b)).toBe(textOf(a) === textOf(b))
        }
      }),
      { numRuns: 300 },
    )
  })
})

describe('taking in the same backup twice', () => {
  test('changes nothing, merged or replaced, and what is here stays the object it was', () => {
    fc.assert(
      fc.property(anyContents, contents => {
        const file = opened(backupText(contents, DAY))
        const comparison = compareBackup(contents, file)
        expect([comparison.trips.fresh, comparison.trips.differ, comparison.trips.here]).toEqual([[], [], []])
        for (const wishes of [merge, replace]) {
          const after = restored(contents, file, wishes, newId)
          expect(after.trips.every((trip, i) => trip === contents.trips[i])).toBe(true)
          expect(plain(after)).toBe(plain(contents))
        }
      }),
      { numRuns: 150 },
    )
  })
})

describe('merging any backup into any library', () => {
  const both = fc.tuple(anyContents, anyContents, fc.nat(4)).map(([here, other, shared]) => {
    // Some trips and things are in both, changed since.
    const trips = here.trips
      .slice(0, shared)
      .map(trip => ({ ...trip, draft: { ...trip.draft, name: 'Other' } }))
    const things = here.shelf.things
      .slice(0, shared)
      .map(thing => ({ ...thing, item: { ...thing.item, massKg: 7 } }))
    const shelf = { ...other.shelf, things: [...things, ...other.shelf.things] }
    return { here, other: { ...other, trips: [...trips, ...other.trips], shelf } }
  })

  test('loses nothing of either side while both are kept', () => {
    fc.assert(
      fc.property(both, ({ here, other }) => {
        const file = opened(backupText(other, DAY))
        const after = restored(here, file, merge, newId)
        for (const trip of here.trips) expect(after.trips).toContain(trip)
        for (const thing of here.shelf.things) expect(after.shelf.things).toContain(thing)
        const gear = new Set(after.trips.map(({ draft }) => canonical(cleanWords(draft.gear))))
        for (const { draft } of file.trips) expect(gear).toContain(canonical(draft.gear))
        for (const pack of here.shelf.packs) expect(after.shelf.packs).toContain(pack)
        for (const { item } of file.shelf?.things ?? [])
          expect(after.shelf.things.some(thing => thing.item.massKg === item.massKg)).toBe(true)
        expect(after.settings).toEqual(here.trips.length || isStocked(here) ? here.settings : file.settings)
      }),
      { numRuns: 150 },
    )
  })

  test('keeps ours, or takes theirs, where that is chosen, and all ids stay apart', () => {
    fc.assert(
      fc.property(both, fc.constantFrom('mine' as const, 'file' as const), ({ here, other }, choice) => {
        const file = opened(backupText(other, DAY))
        const trips = Object.fromEntries(here.trips.map(({ id }) => [id, choice]))
        const after = restored(here, file, { how: 'merge', trips, shelf: choice }, newId)
        for (const list of [after.trips, ...SHELF_LISTS.map(name => after.shelf[name])])
          expect(new Set(list.map(({ id }) => id)).size).toBe(list.length)
        const winner = choice === 'mine' ? here : file
        for (const trip of winner.trips) expect(after.trips).toContainEqual(trip)
        expect(after.trips.length).toBe(new Set([...here.trips, ...file.trips].map(({ id }) => id)).size)
      }),
      { numRuns: 150 },
    )
  })

  test('put back by taking in what was here before, is as it was', () => {
    fc.assert(
      fc.property(both, ({ here, other }) => {
        const before = opened(backupText(here, DAY))
        const after = restored(here, opened(backupText(other, DAY)), merge, newId)
        expect(plain(restored(after, before, replace, newId))).toBe(plain(here))
      }),
      { numRuns: 150 },
    )
  })
})

const isStocked = ({ shelf }: Contents) => SHELF_LISTS.some(list => shelf[list].length > 0)

describe('what would change', () => {
  const here = withTrips(tripOf('a', 'Ridge', 5), tripOf('b', 'Lake', 5), tripOf('c', 'Moor'))
  const changed = tripOf('b', 'Lake', 9)
  const { gear } = changed.draft
  const other = withTrips(
    tripOf('a', 'Ridge'),
    { ...changed, draft: { ...changed.draft, gear: gear.slice(1), carrier: { massKg: 80 } } },
    tripOf('d', 'Coast'),
  )
  const file = opened(backupText(other, DAY))

  test('is said trip by trip: new, the same, different and in what, and which is newer', () => {
    const { trips, isEmptyHere } = compareBackup(here, file)
    expect(isEmptyHere).toBe(false)
    expect(trips.fresh).toEqual([{ id: 'd', name: 'Coast', words: ['3 items', '5 stops'] }])
    expect(trips.same).toEqual([{ id: 'a', name: 'Ridge' }])
    expect(trips.here).toEqual([{ id: 'c', name: 'Moor' }])
    expect(trips.differ).toEqual([
      { id: 'b', name: 'Lake', newer: 'file', words: ['3 items here, 2 in the file', 'the hiker'] },
    ])
  })

  test('comes out as chosen', () => {
    const names4 = (wishes: Wishes) => names(restored(here, file, wishes, newId))
    expect(names4(merge)).toEqual(['Ridge', 'Lake', 'Lake (from the file)', 'Moor', 'Coast'])
    expect(names4({ ...merge, trips: { b: 'mine' } })).toEqual(['Ridge', 'Lake', 'Moor', 'Coast'])
    expect(names4(replace)).toEqual(['Ridge', 'Lake', 'Coast'])
    const taken = restored(here, file, { ...merge, trips: { b: 'file' } }, newId)
    expect(taken.trips[1]).toEqual(file.trips[1])
  })

  test('of equal counts names what is in them', () => {
    const moved = { ...changed, draft: { ...changed.draft, gear: [gear[1]!, gear[0]!, gear[2]!] } }
    const heavier = {
      ...changed,
      draft: { ...changed.draft, gear: gear.with(0, { ...gear[0]!, massKg: 9 }) },
    }
    const words = (trip: typeof changed) =>
      compareBackup(here, opened(backupText(withTrips(trip), DAY))).trips.differ[0]?.words
    expect(words(moved)).toEqual(['the order of the items'])
    expect(words(heavier)).toEqual(['1 of 3 items differ'])
  })

  test('of the shelf is said thing by thing', () => {
    const thing = (massKg: number, at: number) => ({
      id: 't',
      item: { name: 'Tent', massKg },
      changed: { massKg: at },
    })
    const shelved = (...things: ReturnType<typeof thing>[]): Contents => ({
      ...empty(),
      shelf: { ...empty().shelf, things },
    })
    const stocked = opened(backupText(shelved(thing(2, 9)), DAY))
    const { shelf } = compareBackup(shelved(thing(1, 5)), stocked)
    expect(shelf?.things.differ).toEqual([{ id: 't', name: 'Tent', newer: 'file', words: ['mass'] }])
    expect(compareBackup(shelved(thing(2, 5)), stocked).shelf?.things.same).toHaveLength(1)
    const after = restored(shelved(thing(1, 5)), stocked, merge, newId)
    expect(after.shelf.things.map(({ item }) => item.name)).toEqual(['Tent', 'Tent (from the file)'])
  })
})
