// A plan as a link: what comes out is what went in, within the caps, and without what was to be left out.

import { crc32 as zlibCrc32 } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import {
  asSharedOut,
  readLink,
  SHARE_CAPS,
  shareLink,
  withoutBodies,
  withoutNames,
} from '../../src/files/share'
import { fromBase64url, toBase64url } from '../../src/files/share/base64url'
import { crc32 } from '../../src/files/share/crc32'
import { deflate, inflate } from '../../src/files/share/deflate'
import {
  completePlan,
  documentOfPerson,
  type PlanDocument,
  parsePlan,
  type WrittenPlan,
  withPacksOnly,
} from '../../src/plan'
import { reckon } from '../../src/reckon'
import { family } from '../engine/family'

const BASE = new URL('https://packs.example/app/?from=mail#old')

function checked(value: unknown): PlanDocument {
  const parsed = parsePlan(value)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.document
}

async function linkOf(document: WrittenPlan): Promise<string> {
  const made = await shareLink(document, BASE)
  if (!made.ok) throw new Error(made.message)
  return made.link
}

const demoPlan = checked(demo)
const withItems = (count: number, name: (i: number) => string): PlanDocument => ({
  ...demoPlan,
  gear: Array.from({ length: count }, (_, i) => ({ id: `i${i}`, name: name(i), massKg: i / 100, litres: 1 })),
})
/** Names that no packing makes smaller, the same every time. */
const noise = (i: number) =>
  toBase64url(Uint8Array.from({ length: 30 }, (_, k) => (i * 7919 + k * 104729) >> 3))

describe('a shared link', () => {
  test('brings the demo plan back whole, up to the ids of its items, and reckons the same', async () => {
    const link = await linkOf(demoPlan)
    const read = await readLink(new URL(link).hash)
    if (!read.ok) throw new Error(read.message)
    const bare = ({ id: _id, inside: _inside, ...item }: NonNullable<PlanDocument['gear']>[number]) => item
    expect({ ...read.document, gear: read.document.gear?.map(bare) }).toEqual({
      ...demoPlan,
      gear: demoPlan.gear?.map(bare),
    })
    expect(reckon(completePlan(read.document as PlanDocument))).toEqual(reckon(completePlan(demoPlan)))
  })

  test('brings the weather of the trip and of a leg, and the mark of a shop', async () => {
    const [start, first, ...rest] = demoPlan.trip.stops
    const stop = { ...first!, shop: true, leg: { ...first!.leg!, sun: false } }
    const weather = { airC: 31, humidity: 0.25, sun: true }
    const document = { ...demoPlan, trip: { ...demoPlan.trip, stops: [start!, stop, ...rest], weather } }
    const read = await readLink(new URL(await linkOf(document)).hash)
    expect(read).toMatchObject({ ok: true, document: { trip: document.trip } })
  })

  test('stays below the length that most programs pass on, for the demo plan', async () => {
    expect((await linkOf(demoPlan)).length).toBeLessThanOrEqual(SHARE_CAPS.easyLinkChars)
  })

  test('keeps what is inside what', async () => {
    const boxed = checked({
      ...demo,
      gear: [
        { id: 'a9f3', name: 'Cup', massKg: 0.1, litres: 0.3, inside: '77c1' },
        { id: '77c1', name: 'Pot', massKg: 0.2, litres: 1, build: 'rigid', holdsLitres: 0.9 },
      ],
    })
    const read = await readLink(new URL(await linkOf(boxed)).hash)
    expect(read.ok && read.document.gear?.map(({ name, id, inside }) => [name, id, inside])).toEqual([
      ['Cup', '0', '1'],
      ['Pot', '1', undefined],
    ])
  })

  test('carries the plan after the "#" only, and drops what else the address held', async () => {
    const { origin, pathname, search, hash } = new URL(await linkOf(demoPlan))
    expect([origin, pathname, search]).toEqual(['https://packs.example', '/app/', ''])
    expect(hash).toMatch(/^#plan=1\.[\w-]+$/)
  })

  test('is not made longer than it would be read: the plan is to be saved as a file', async () => {
    const made = await shareLink(
      withItems(300, i => noise(i)),
      BASE,
    )
    expect(made).toMatchObject({ ok: false, message: expect.stringMatching(/too long.*8,000.*file/) })
    const huge = await shareLink(
      withItems(5000, () => 'a'.repeat(200)),
      BASE,
    )
    expect(huge).toMatchObject({ ok: false, message: expect.stringMatching(/too long/) })
  })

  test('is read again whenever it is made, whatever the names', async () => {
    const name = fc.string({ unit: 'binary', minLength: 1, maxLength: 60 })
    await fc.assert(
      fc.asyncProperty(
        name,
        name,
        fc.double({ min: 0, max: 200, noNaN: true }),
        async (stop, item, massKg) => {
          const stops = [{ name: `x${stop}` }, { name: 'End', leg: { km: 3 } }]
          const plan = { ...demoPlan, trip: { stops }, gear: [{ id: 'q', name: item, massKg, litres: 1 }] }
          const read = await readLink(new URL(await linkOf(plan)).hash)
          expect(read).toMatchObject({ ok: true, document: { gear: [{ massKg: massKg + 0 }] } })
        },
      ),
      { numRuns: 50 },
    )
  }, 20_000)
})

describe('the person in a shared plan', () => {
  test('is left out but for the limit, with 70 kg in the place of the body mass', () => {
    expect(withoutBodies(demoPlan).carrier).toEqual({ massKg: 70, loadShareLimit: 0.2 })
    expect(JSON.stringify(withoutBodies(demoPlan))).not.toMatch(/heightCm"|ageYears|sex/)
  })

  test('keeps the stricter limit of somebody under 18, whose age is left out', () => {
    const young = checked({ ...demo, carrier: { massKg: 50, ageYears: 15 } })
    expect(withoutBodies(young).carrier).toEqual({ massKg: 70, loadShareLimit: 0.15 })
  })

  test('may be a child whose plan goes by energy: it is still a plan without the age', () => {
    const child = checked({
      ...demo,
      carrier: { massKg: 35, ageYears: 11 },
      trip: { ...demo.trip, meals: { ration: 'energy' } },
      gear: [],
    })
    expect(parsePlan(withoutBodies(child)).ok).toBe(true)
  })
})

describe('its parts', () => {
  test('the check sum is the one of gzip: its well-known value for "123456789", and zlib’s for any bytes', () => {
    // Well-known check value 0xCBF43926: from memory; the independent reference is Node's own zlib.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926)
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), bytes => crc32(bytes) === zlibCrc32(bytes)))
  })

  test('base64url comes back byte for byte, is the one of Node, and refuses anything else', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 100 }), bytes => {
        const text = toBase64url(bytes)
        expect(text).toBe(Buffer.from(bytes).toString('base64url'))
        expect(fromBase64url(text)).toEqual(bytes)
      }),
    )
    for (const wrong of ['a', 'ab=', 'a b', 'a+b/', 'ä', 'abcde', 'ab\n'])
      expect(fromBase64url(wrong), JSON.stringify(wrong)).toBeNull()
  })

  test('unpacking stops at its cap: one byte over is too large, the cap itself is not', async () => {
    for (const [size, ok] of [
      [999, true],
      [1000, true],
      [1001, false],
    ] as const)
      expect(await inflate(await deflate(new Uint8Array(size)), 1000)).toMatchObject(
        ok ? { ok, bytes: { length: size } } : { ok, because: 'too-large' },
      )
  })
})

describe('a plan of several people', () => {
  const carriers = new Map([
    ['tent', 'bo'],
    ['food', 'cy'],
    ['bottle of ada', 'ada'],
  ])

  test('comes back from a link with who carries what, without names and bodies where these are left out', async () => {
    const given = withoutBodies(withoutNames(asSharedOut(family, carriers)))
    const read = await readLink(new URL(await linkOf(given)).hash)
    if (!read.ok) throw new Error(read.message)
    const text = JSON.stringify(read.document)
    expect(text).not.toMatch(/Ada|Cy|ageYears|"massKg":(60|80|34)\b/)
    expect(read.document.people).toEqual([
      { id: '0', massKg: 70, loadShareLimit: 0.2 },
      { id: '1', massKg: 70, loadShareLimit: 0.2 },
      { id: '2', massKg: 70, loadShareLimit: 0.15, waterShare: 0.5 },
    ])
    const items = new Map(read.document.gear!.map(item => [item.name, item]))
    expect([items.get('Tent')!.carriedBy, items.get('Food')!.carriedBy]).toEqual(['1', '2'])
    expect(items.get('Bottle')).not.toHaveProperty('carriedBy')
  })

  test('gives a link of one person, who is then a lone hiker with their share of the water', () => {
    const own = documentOfPerson(asSharedOut(family, carriers), carriers, 2)
    expect(own.gear!.map(({ id }) => id)).toEqual(['food'])
    expect(own.trip.water).toMatchObject({ litresPerHour: 0.25, campLitres: 1.5, reserveLitres: 0.25 })
    expect(own).not.toHaveProperty('people')
    expect(parsePlan(own).ok).toBe(true)
  })

  test('with fewer packs keeps those that people take, at their new places', () => {
    const pack = { bodyLitres: 40, setups: [{ name: 's', massKg: 1, frame: 'framed' as const }] }
    const packs = ['A', 'B', 'C'].map(name => ({ ...pack, name }))
    const [ada, bo, cy] = family.people
    const people = [{ ...ada!, pack: { pack: 2 } }, { ...bo!, pack: { pack: 1 } }, cy!]
    const some = withPacksOnly({ ...family, packs, people }, [0, 2])
    expect(some.packs!.map(({ name }) => name)).toEqual(['A', 'C'])
    expect(some.people.map(each => each.pack)).toEqual([{ pack: 1 }, undefined, undefined])
  })
})
