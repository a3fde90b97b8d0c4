import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BACKUP_CAPS, backupText, type Contents, restored } from '../../src/files/backup'
import { CAPS, cleanText } from '../../src/plan'
import { wholeDraft } from '../plan/drafts'
import { anyContents, empty, opened, read } from './backups'

const trip = (id: string, draft: object = wholeDraft()) => ({
  format: 'pack-reckoner/trip',
  version: 1,
  id,
  demo: false,
  changedAt: 5,
  draft,
  typed: {},
})
const shelf = { format: 'pack-reckoner/shelf', version: 1, things: [], bases: [], packings: [], typed: {} }
const settings = { system: 'us', theme: 'dark' }
const whole = {
  format: 'pack-reckoner/backup',
  version: 1,
  savedOn: '2026-01-02',
  settings,
  shelf,
  trips: [trip('a')],
}
const textOf = (part: object) => JSON.stringify({ ...whole, ...part })
const messageOf = (text: string) => {
  const found = read(text)
  return found.ok ? '' : found.message
}

describe('a file that is no backup', () => {
  test('is told from one that was cut short, and from one of a newer version', () => {
    expect(messageOf('{"format":"pack-reckoner/plan","version":1}')).toMatch(/no backup of Pack Reckoner/)
    for (const text of ['[]', '7', 'null', '"x"']) expect(messageOf(text)).toMatch(/no backup|cut short/)
    expect(messageOf('{]}')).toMatch(/is damaged/)
    expect(messageOf(textOf({ version: 5 }))).toMatch(/newer version .* update it/)
    for (const version of [0, '1', 1.5, null]) expect(messageOf(textOf({ version }))).toMatch(/which version/)
  })

  test('cut anywhere is refused, never read in part', () => {
    const text = backupText({ ...empty(), trips: [trip('a') as Contents['trips'][number]] }, '2026-01-02')
    for (let end = 0; end < text.trimEnd().length; end += 11)
      expect(messageOf(text.slice(0, end)), String(end)).toMatch(/cut short|damaged/)
  })
})

describe('the caps', () => {
  const things = (n: number) =>
    Array.from({ length: n }, (_, i) => ({ id: `t${i}`, item: { name: 'Peg' }, changed: {} }))

  test('let as much in as they say, and not one more', () => {
    const at = (trips: number) =>
      textOf({ trips: Array.from({ length: trips }, (_, i) => trip(`t${i}`, bare)) })
    const bare = { carrier: {}, trip: { stops: [] }, gear: [], packs: [] }
    expect(read(at(BACKUP_CAPS.trips)).ok).toBe(true)
    expect(messageOf(at(BACKUP_CAPS.trips + 1))).toMatch(/holds 2,001 trips; at most 2,000 are read/)
    expect(
      opened(textOf({ shelf: { ...shelf, things: things(BACKUP_CAPS.things) } })).shelf?.things,
    ).toHaveLength(20_000)
    expect(messageOf(textOf({ shelf: { ...shelf, things: things(BACKUP_CAPS.things + 1) } }))).toMatch(
      /20,001 things/,
    )
  })

  test('stop a file that is too large before it is parsed', () => {
    const padded = (size: number) => textOf({}).padEnd(size, ' ')
    expect(read(padded(BACKUP_CAPS.fileBytes)).ok).toBe(true)
    expect(messageOf(padded(BACKUP_CAPS.fileBytes + 1))).toMatch(/larger than 30 MB/)
  })

  test('stop nesting that would break a recursion', () => {
    const deep = (n: number) =>
      textOf({ trips: [trip('a')] }).replace('"demo":false', `"demo":${'['.repeat(n)}${']'.repeat(n)}`)
    expect(messageOf(deep(100_000))).toMatch(/deeper than 24 levels/)
    expect(messageOf(deep(21))).toBe('')
    expect(messageOf(deep(22))).toMatch(/deeper than/)
  })

  test('refuse a trip with more in it than a plan may hold, and keep the others', () => {
    const stops = Array.from({ length: CAPS.stops + 1 }, (_, i) => ({ id: `s${i}`, name: 'x' }))
    const found = opened(
      textOf({ trips: [trip('a'), trip('b', { ...wholeDraft(), name: 'Long', trip: { stops } })] }),
    )
    expect(found.trips.map(({ id }) => id)).toEqual(['a'])
    expect(found.leftOut).toEqual(['Trip 2 “Long” holds too many stops: 500 at most: it is left out.'])
    expect(found.damagedTrips).toEqual(['b'])
  })
})

describe('damaged entries', () => {
  test('are left out one by one and listed, and spoil no other', () => {
    const trips = [
      trip('a'),
      { ...trip('b'), draft: 7 },
      null,
      trip('a'),
      trip('c', { ...wholeDraft(), gear: [null] }),
    ]
    const parts = {
      ...shelf,
      things: [
        { id: 't', item: { name: 'Tent' }, changed: {} },
        { id: 'u', item: 5 },
        { id: 't', item: {}, changed: {} },
      ],
      bases: [{ id: 'b', name: 'Base', lines: [{ thing: 't' }] }, { name: 'No id' }],
      packings: [{ id: 'p', gear: 'Torn', pack: 'Big' }],
    }
    const found = opened(textOf({ trips, shelf: parts, extra: 1 }))
    expect(found.trips.map(({ id }) => id)).toEqual(['a'])
    expect(found.shelf?.things.map(({ id }) => id)).toEqual(['t'])
    expect(found.shelf?.bases).toHaveLength(1)
    expect(found.leftOut).toEqual([
      'Trip 2 is damaged (draft): it is left out.',
      'Trip 3 is damaged (it is not what its place asks for): it is left out.',
      'Trip 4 “Ridge” is in the file twice: it is left out.',
      'Trip 5 “Ridge” is damaged (draft/gear/0): it is left out.',
      'Item 2 is damaged (item): it is left out.',
      'Item 3 is in the file twice: it is left out.',
      'Kit 2 “No id” is damaged (id): it is left out.',
      'Packing 1 “Torn” is damaged (at): it is left out.',
      '“extra” is no part of a backup.',
    ])
  })

  test('of a newer kind are left out with the reason', () => {
    const found = opened(textOf({ trips: [trip('a'), { ...trip('b'), version: 6 }] }))
    expect(found.leftOut[0]).toMatch(/Trip 2 “Ridge” was saved by a newer version/)
  })

  test('are no reason to lose what is here, when everything is replaced', () => {
    const here = { ...empty(), trips: [trip('b') as Contents['trips'][number]] }
    const file = opened(textOf({ trips: [trip('a'), { ...trip('b'), draft: null }], shelf: 3, settings: [] }))
    const after = restored(here, file, { how: 'replace', trips: {}, shelf: 'both' }, () => 'n')
    expect(after.trips.map(({ id }) => id)).toEqual(['a', 'b'])
    expect(after.shelf).toBe(here.shelf)
    expect(after.settings).toBe(here.settings)
  })

  test('inside a trip: values that no field can hold go, and are named; gaps and odd numbers stay', () => {
    const draft = {
      ...wholeDraft(),
      gear: [
        { id: 'x', name: { html: '<b>' }, massKg: '0.5', stow: 'moon', litres: 1e9, count: -2, strange: 1 },
        { id: 'y', shelf: { id: 'q', at: 'soon' }, leaves: 3 },
        { id: 'z', shelf: { id: 'q', at: 7 }, massKg: null },
      ],
    }
    const found = opened(textOf({ trips: [trip('a', draft)] }))
    expect(found.trips[0]!.draft.gear).toEqual([
      { id: 'x', litres: 1e9, count: -2 },
      { id: 'y', leaves: 3 },
      { id: 'z', shelf: { id: 'q', at: 7 } },
    ])
    expect(found.leftOut[0]).toMatch(/^Trip 1 “Ridge”: .*Item 1, name.*cannot be read and is left out\.$/)
  })
})

describe('a hostile backup', () => {
  test('changes no prototype, and brings none of its keys along', () => {
    const evil = '{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},'
    const texts = [
      evil + textOf({}).slice(1),
      textOf({}).replace('"carrier":{', '"carrier":{"__proto__":{"polluted":true},'),
      textOf({ shelf: { ...shelf, things: [{ id: 't', item: { name: 'x' }, changed: {} }] } })
        .replace('"item":{', '"item":{"__proto__":{"polluted":true},"constructor":1,')
        .replace('"changed":{', '"changed":{"__proto__":5,"constructor":5'),
      textOf({ trips: [{ ...trip('a'), typed: {} }] }).replace(
        '"typed":{',
        '"typed":{"__proto__":"x","constructor/a":"x"',
      ),
    ]
    for (const text of texts) {
      const file = opened(text)
      const after = restored(empty(), file, { how: 'merge', trips: {}, shelf: 'both' }, () => 'n')
      expect(JSON.stringify(after)).not.toMatch(/polluted|__proto__|constructor/)
      expect(Object.getPrototypeOf(after.trips[0]!.draft.carrier)).toBe(Object.prototype)
    }
    expect('polluted' in {}).toBe(false)
  })

  test('keeps markup as plain text and loses characters that turn or hide text', () => {
    const name = '<img src=x onerror=alert(1)>\u202e\u2066gnp.exe\u200b\u0000'
    const thing = { id: 't', item: { name }, note: 'one\r\ntwo\u202e\nthree', changed: {} }
    const found = opened(
      textOf({ trips: [trip('a', { ...wholeDraft(), name })], shelf: { ...shelf, things: [thing] } }),
    )
    expect(found.trips[0]!.draft.name).toBe('<img src=x onerror=alert(1)>gnp.exe')
    expect(found.shelf?.things[0]?.item.name).toBe('<img src=x onerror=alert(1)>gnp.exe')
    expect(found.shelf?.things[0]?.note).toBe('one\ntwo\nthree')
    const told = opened(textOf({ '\u202eevil': 1, trips: [{ draft: { name: '\u202eevil' } }] })).leftOut
    expect(told.join()).toBe(cleanText(told.join()))
  })

  test('with numbers beyond all numbers or dates is damaged, not believed', () => {
    for (const changedAt of ['1e999', '9e15', '-1', '0.5', '"x"']) {
      const text = textOf({}).replace('"changedAt":5', `"changedAt":${changedAt}`)
      expect(opened(text).leftOut[0]).toMatch(/Trip 1 “Ridge” is damaged \(changedAt\)/)
    }
    const found = opened(textOf({}).replace('"massKg":64', '"massKg":1e999'))
    expect(found.trips[0]!.draft.carrier).toEqual({})
  })

  test('is answered, whatever was done to its text', () => {
    const text = fc.oneof(
      anyContents.map(contents => backupText(contents, '2026-01-02')),
      fc.constant(textOf({})),
    )
    const cut = fc.tuple(text, fc.nat(), fc.nat(12), fc.string({ maxLength: 6 }))
    const hostile = cut.map(([made, at, size, put]) => {
      const from = at % made.length
      return made.slice(0, from) + put + made.slice(from + size)
    })
    const junk = fc
      .json({ maxDepth: 5 })
      .map(json => textOf({ trips: JSON.parse(json), shelf: JSON.parse(json) }))
    fc.assert(
      fc.property(fc.oneof(hostile, junk), given => {
        const found = read(given)
        if (!found.ok) {
          expect(found.message).toMatch(/^[A-Z].*\.$/)
          return
        }
        const after = restored(empty(), found.backup, { how: 'merge', trips: {}, shelf: 'both' }, () => 'n')
        // What came in can go out, and come in again.
        expect(opened(backupText(after, '2026-01-02')).leftOut).toEqual([])
      }),
      { numRuns: 1500 },
    )
  })
})

describe('a backup of before the packs had a list of their own', () => {
  test('gives them to the list: what is the same once, what differs told apart by its trip', () => {
    const pack = (id: string, name: string, bodyLitres: number) => ({ id, name, bodyLitres, setups: [] })
    const withPacks = (id: string, name: string, ...packs: ReturnType<typeof pack>[]) =>
      trip(id, { ...wholeDraft(), name, packs })
    const found = opened(
      textOf({
        trips: [
          withPacks('a', 'Ridge', pack('p', 'Big', 60), pack('q', 'Small', 30)),
          withPacks('b', 'Lake', pack('p', 'Big', 60), pack('q', 'Small', 35)),
        ],
      }),
    )
    expect(found.leftOut).toEqual([])
    expect(found.trips.map(({ draft }) => draft.packs)).toEqual([[], []])
    expect(found.shelf?.packs).toEqual([
      pack('p', 'Big', 60),
      pack('q', 'Small', 30),
      pack('q-b', 'Small (Lake)', 35),
    ])
  })

  test('leaves out what no fact of a pack can be, and says so', () => {
    const packs = [
      { id: 'p', name: 'Big', setups: [], starred: 'very', notes: 7, has: 'owned', aside: 'too hot' },
      { id: 'p', name: 'Twice', setups: [] },
      { name: 'No id', setups: [] },
    ]
    const found = opened(textOf({ version: 2, trips: [], shelf: { ...shelf, version: 3, packs } }))
    expect(found.shelf?.packs).toEqual([{ id: 'p', name: 'Big', setups: [], has: 'owned', aside: 'too hot' }])
    expect(found.leftOut).toEqual([
      'Pack 2 “Twice” is in the file twice: it is left out.',
      'Pack 3 “No id” is damaged (id): it is left out.',
      'The packs: Pack 1, star, Pack 1, notes cannot be read.',
    ])
  })
})
