import { describe, expect, test } from 'vitest'
import type { Contents } from '../../src/files/backup'
import { packSnapshot, readHead, snapshotText } from '../../src/store/snapshot-file'
import { createSnapshots, dayOf, MOST_SNAPSHOTS } from '../../src/store/snapshots'
import type { Place } from '../../src/store/snapshots-place'
import { within } from '../../src/store/within'
import { wholeDraft } from '../plan/drafts'

const DAY_MS = 86_400_000
const NOON = new Date(2026, 4, 1, 12).getTime()

const library = (name: string): Contents => ({
  trips: [
    {
      format: 'pack-reckoner/trip',
      version: 5,
      id: 'a',
      demo: false,
      changedAt: 1,
      draft: { ...wholeDraft(), name },
      typed: {},
    },
  ],
  shelf: { things: [], bases: [], packings: [], packs: [], typed: {} },
  settings: { system: 'metric', theme: 'auto' },
})
const nothing: Contents = { ...library(''), trips: [] }

function shelfOf(files = new Map<string, Blob>()) {
  const clock = { at: NOON }
  const place: Place = {
    names: async () => [...files.keys()],
    read: async name => files.get(name) ?? null,
    write: async (name, blob) => void files.set(name, blob),
    remove: async name => void files.delete(name),
  }
  const faults: { place?: () => Promise<Place | null> } = {}
  const snapshots = createSnapshots({
    place: () => faults.place?.() ?? Promise.resolve(place),
    now: () => clock.at,
    alone: work => work(),
  })
  return { files, clock, place, faults, snapshots }
}

describe('snapshots', () => {
  test('are one a day at most, and only when something has changed', async () => {
    const { snapshots, clock } = shelfOf()
    expect(await snapshots.take('day', library('A'))).toBe(true)
    clock.at += 1000
    expect(await snapshots.take('day', library('B'))).toBe(false)
    clock.at += DAY_MS
    expect(await snapshots.take('day', library('A'))).toBe(false)
    expect(await snapshots.take('day', library('B'))).toBe(true)
    const listed = await snapshots.list()
    expect(listed.map(({ head }) => head?.day)).toEqual(['2026-05-02', '2026-05-01'])
    expect(listed[0]).toMatchObject({ state: 'whole', head: { trips: 1, things: 0, reason: 'day' } })
    expect(await snapshots.text(listed[0]!.name)).toContain('"name": "B"')
  })

  test('are taken before each restore too, but of nothing never', async () => {
    const { snapshots, clock } = shelfOf()
    expect(await snapshots.take('before', nothing)).toBe(false)
    for (const name of ['A', 'B', 'B', 'C']) {
      clock.at += 1000
      await snapshots.take('before', library(name))
    }
    expect(await snapshots.list()).toHaveLength(3)
  })

  test('are the last ten', async () => {
    const { snapshots, clock } = shelfOf()
    for (let i = 0; i < 14; i++) {
      clock.at += DAY_MS
      await snapshots.take('day', library(`day ${i}`))
    }
    const texts = await Promise.all((await snapshots.list()).map(({ name }) => snapshots.text(name)))
    expect(texts).toHaveLength(MOST_SNAPSHOTS)
    expect(texts[0]).toContain('day 13')
    expect(texts.at(-1)).toContain('day 4')
  })

  test('that are damaged, or of a newer version, are listed as that and never removed by themselves', async () => {
    const { snapshots, clock, files } = shelfOf()
    files.set('1-day.snapshot', new Blob(['{"format":"pack-reckoner/snapshot","version":9}\n…']))
    files.set('2-day.snapshot', new Blob(['\u0000\u0001 torn']))
    files.set('3-day.snapshot', new Blob([]))
    files.set('4-day.snapshot.crswap', new Blob(['half']))
    for (let i = 0; i < 12; i++) {
      clock.at += DAY_MS
      await snapshots.take('day', library(`day ${i}`))
    }
    const listed = await snapshots.list()
    expect(listed.filter(({ state }) => state === 'whole')).toHaveLength(MOST_SNAPSHOTS)
    expect(
      listed
        .slice(MOST_SNAPSHOTS)
        .map(({ state }) => state)
        .sort(),
    ).toEqual(['damaged', 'newer'])
    await expect(snapshots.text('2-day.snapshot')).rejects.toMatchObject({ name: 'DataError' })
    expect(await (await snapshots.raw('2-day.snapshot'))?.text()).toContain('torn')
    await snapshots.remove('2-day.snapshot')
    expect(files.has('2-day.snapshot')).toBe(false)
  })

  test('that cannot be read at all stop no other, and are listed; a place that does not answer is said', async () => {
    const { snapshots, clock, files, faults, place } = shelfOf()
    await snapshots.take('day', library('A'))
    const fails = () => Promise.reject(new DOMException('', 'NotReadableError'))
    files.set('1-day.snapshot', Object.assign(new Blob(['x']), { slice: () => ({ text: fails }) }))
    files.set('2-day.snapshot', new Blob(['y']))
    const read = (name: string) => (name.startsWith('2') ? fails() : place.read(name))
    faults.place = async () => ({ ...place, read })
    clock.at += DAY_MS
    expect(await snapshots.take('day', library('B'))).toBe(true)
    const states = (await snapshots.list()).map(({ state, bytes }) => [state, bytes > 0])
    expect(states).toEqual([
      ['whole', true],
      ['whole', true],
      ['damaged', true],
      ['damaged', false],
    ])
    expect(files.has('1-day.snapshot')).toBe(true)
    faults.place = async () => ({ ...place, read: () => within(new Promise<never>(() => {}), 20) })
    await expect(snapshots.list()).rejects.toMatchObject({ name: 'TimeoutError' })
  })

  test('whose place is full, absent or silent say so and leave the others alone', async () => {
    const { snapshots, clock, faults, place } = shelfOf()
    await snapshots.take('day', library('A'))
    clock.at += DAY_MS
    const full = () => Promise.reject(new DOMException('', 'QuotaExceededError'))
    faults.place = async () => ({ ...place, write: full })
    await expect(snapshots.take('day', library('B'))).rejects.toMatchObject({ name: 'QuotaExceededError' })
    faults.place = async () => null
    await expect(snapshots.list()).rejects.toMatchObject({ name: 'NotSupportedError' })
    faults.place = () => within(new Promise<never>(() => {}), 20)
    await expect(snapshots.take('day', library('B'))).rejects.toMatchObject({ name: 'TimeoutError' })
    delete faults.place
    expect(await snapshots.take('day', library('B'))).toBe(true)
    expect(await snapshots.list()).toHaveLength(2)
  })

  test('stand under the day of the reader’s own clock', () => {
    expect(dayOf(new Date(2026, 0, 9, 0, 5).getTime())).toBe('2026-01-09')
    expect(dayOf(new Date(2026, 10, 30, 23, 55).getTime())).toBe('2026-11-30')
  })
})

describe('a snapshot’s file', () => {
  const facts = { at: NOON, day: '2026-05-01', reason: 'day', trips: 1, things: 0 } as const
  const text = `{"name":"${'äö€'.repeat(5000)}"}\n`

  test('is packed, and gives back the same text', async () => {
    const file = await packSnapshot(new Blob([text]), facts)
    expect(file.size).toBeLessThan(text.length / 10)
    expect(await snapshotText(file)).toBe(text)
    expect(await readHead(file)).toMatchObject({ ok: true, head: facts })
  })

  test('cut, changed or doubled anywhere gives no text, never another one', async () => {
    const bytes = new Uint8Array(await (await packSnapshot(new Blob([text]), facts)).arrayBuffer())
    for (let at = 0; at < bytes.length; at += 7) {
      const changed = bytes.slice()
      changed[at]! ^= 0x15
      for (const wrong of [changed, bytes.slice(0, at), new Uint8Array([...bytes.slice(0, at), ...bytes])]) {
        const found = await snapshotText(new Blob([wrong]))
        // A changed date or count in the first line does not touch what is in the snapshot.
        expect(found === null || found === text).toBe(true)
      }
    }
  })
})
