// Two tabs' versions of a trip, joined: no change of either is lost, and only what both changed is a clash.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addItem, type Draft, moveItem, removeItem, setField } from '../../src/plan'
import type { TripDocument } from '../../src/store/documents'
import { mergeTrips } from '../../src/store/merge-trips'
import { wholeDraft } from '../plan/drafts'

const tripOf = (draft: Draft, typed = {}): TripDocument => ({
  format: 'pack-reckoner/trip',
  version: 5,
  id: 'trip',
  demo: false,
  changedAt: 1,
  revision: 1,
  draft,
  typed,
})
const base = tripOf(wholeDraft())
const [first, second] = base.draft.gear
const edited = (...fields: [string, unknown][]) =>
  tripOf(fields.reduce((draft, [path, value]) => setField(draft, path, value), base.draft))
const mass = `gear/${first!.id}/massKg`

describe('two versions of a trip', () => {
  test('of which one is as it was: the other', () => {
    const other = edited(['name', 'Other'])
    expect(mergeTrips({ base, ours: base, theirs: other }).trip.draft).toEqual(other.draft)
    expect(mergeTrips({ base, ours: other, theirs: base }).trip.draft).toEqual(other.draft)
  })

  test('that changed the same field: ours, and the field is named', () => {
    const [ours, theirs] = [edited([mass, 1], ['name', 'A']), edited([mass, 2])]
    const { trip, clashes } = mergeTrips({ base, ours, theirs })
    expect(clashes).toEqual([mass])
    expect(trip.draft).toEqual(ours.draft)
  })

  test('of which one wrote a text that is no number and the other a number: the field is named', () => {
    const ours = { ...edited([mass, undefined]), typed: { [mass]: 'two' } }
    const { trip, clashes } = mergeTrips({ base, ours, theirs: edited([mass, 2]) })
    expect(clashes).toEqual([mass])
    expect(trip.typed).toEqual({ [mass]: 'two' })
  })

  test('of which one removed an item: gone, unless the other changed it', () => {
    const without = tripOf(removeItem(base.draft, first!.id))
    const touched = edited([`gear/${second!.id}/massKg`, 9])
    const ids = (trip: TripDocument) => trip.draft.gear.map(({ id }) => id)
    expect(ids(mergeTrips({ base, ours: without, theirs: touched }).trip)).not.toContain(first!.id)
    expect(ids(mergeTrips({ base, ours: without, theirs: edited([mass, 9]) }).trip)).toContain(first!.id)
  })

  test('with one id twice in a list: the list is one field', () => {
    const twice = (massKg: number) =>
      tripOf({ ...base.draft, gear: [...base.draft.gear, { ...first!, massKg }] })
    const { trip, clashes } = mergeTrips({ base, ours: twice(1), theirs: twice(2) })
    expect(clashes).toEqual(['gear'])
    expect(trip.draft.gear).toHaveLength(base.draft.gear.length + 1)
  })

  test('of which the state they were made from is not known: ours, and all that differs is named', () => {
    const [ours, theirs] = [edited(['name', 'A']), edited([mass, 2])]
    const { trip, clashes } = mergeTrips({ base: undefined, ours, theirs })
    expect(new Set(clashes)).toEqual(new Set(['name', mass]))
    expect(trip.draft).toEqual(ours.draft)
  })

  test('is later than both', () => {
    const [ours, theirs] = [
      { ...edited(['name', 'A']), changedAt: 7 },
      { ...edited([mass, 2]), changedAt: 9 },
    ]
    expect(mergeTrips({ base, ours, theirs }).trip.changedAt).toBeGreaterThan(9)
  })
})

type Edit = (draft: Draft) => Draft
const places = ['massKg', 'litres', 'name', 'count'] as const
const anEdit = (by: string): fc.Arbitrary<Edit> =>
  fc.oneof(
    fc
      .tuple(fc.nat(base.draft.gear.length - 1), fc.constantFrom(...places), fc.integer({ min: 1, max: 9 }))
      .map(
        ([i, place, value]): Edit =>
          draft =>
            setField(draft, `gear/${base.draft.gear[i]!.id}/${place}`, `${by}${value}`),
      ),
    fc.nat(99).map(
      (n): Edit =>
        draft =>
          draft.gear.some(({ id }) => id === `${by}-${n}`) ? draft : addItem(draft, () => `${by}-${n}`),
    ),
    fc.nat(base.draft.gear.length - 1).map(
      (i): Edit =>
        draft =>
          removeItem(draft, base.draft.gear[i]!.id),
    ),
    fc.nat(base.draft.gear.length - 1).map(
      (i): Edit =>
        draft =>
          moveItem(draft, base.draft.gear[i]!.id, 0),
    ),
  )
const versionBy = (by: string) =>
  fc
    .array(anEdit(by), { maxLength: 6 })
    .map(edits => tripOf(edits.reduce((draft, edit) => edit(draft), base.draft)))

/** Every value of every item, by where it stands. */
const leaves = ({ draft }: TripDocument) =>
  new Map(draft.gear.flatMap(item => places.map(place => [`gear/${item.id}/${place}`, item[place]] as const)))

describe('any two versions', () => {
  test('each field is what one of them made of it, and of all that is lost a clash tells', () => {
    fc.assert(
      fc.property(versionBy('a'), versionBy('b'), (ours, theirs) => {
        const { trip, clashes } = mergeTrips({ base, ours, theirs })
        const [was, mine, other, made] = [base, ours, theirs, trip].map(leaves)
        for (const [path, value] of other!) {
          const isTheirs = value !== was!.get(path) && mine!.has(path)
          const isOurs = mine!.get(path) !== was!.get(path)
          if (!isTheirs) continue
          if (isOurs && mine!.get(path) !== value) {
            expect(clashes).toContain(path)
            expect(made!.get(path)).toBe(mine!.get(path))
          } else expect(made!.get(path)).toBe(value)
        }
        for (const [path, value] of mine!) if (value !== was!.get(path)) expect(made!.get(path)).toBe(value)
      }),
    )
  })

  test('hold the same things whichever of them is ours, but for the clashes', () => {
    fc.assert(
      fc.property(versionBy('a'), versionBy('b'), (ours, theirs) => {
        const one = mergeTrips({ base, ours, theirs })
        const other = mergeTrips({ base, ours: theirs, theirs: ours })
        expect(new Set(one.clashes)).toEqual(new Set(other.clashes))
        const ids = ({ trip }: typeof one) => trip.draft.gear.map(({ id }) => id).sort()
        expect(ids(one)).toEqual(ids(other))
        expect(new Set(ids(one)).size).toBe(ids(one).length)
      }),
    )
  })
})
