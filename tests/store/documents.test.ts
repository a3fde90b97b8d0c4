import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { emptyDraft } from '../../src/plan'
import { emptyLibrary } from '../../src/store/documents'
import { HISTORY, type Kind, LIBRARY, readRecord, TRIP } from '../../src/store/record-kinds'
import { wholeDraft } from '../plan/drafts'

const trip = (draft: unknown = emptyDraft()) => ({
  format: 'pack-reckoner/trip',
  version: 1,
  id: 't',
  demo: false,
  changedAt: 5,
  revision: 1,
  draft,
  typed: {},
})

interface Third {
  format: 'x'
  version: 3
  litres: number
}
const third: Kind<Third> = {
  what: 'A third',
  format: 'x',
  ladder: [
    old => ({ ...(old as object), version: 2, gallons: 2 }),
    old => ({ format: 'x', version: 3, litres: (old as { gallons: number }).gallons * 4 }),
  ],
  shape: z.object({ version: z.literal(3), litres: z.number() }),
}

describe('reading a record', () => {
  test('climbs from any older version, one rung after the other', () => {
    const now = { ok: true, value: { format: 'x', version: 3, litres: 8 } }
    expect(readRecord(third, { format: 'x', version: 1 })).toEqual(now)
    expect(readRecord(third, { format: 'x', version: 2, gallons: 2 })).toEqual(now)
    expect(readRecord(third, { format: 'x', version: 3, litres: 8 })).toEqual(now)
  })

  test('tells a newer record from a damaged one', () => {
    expect(readRecord(third, { format: 'x', version: 4 })).toMatchObject({ ok: false, reason: 'newer' })
    for (const damaged of [
      null,
      5,
      [],
      {},
      { format: 'y', version: 1 },
      { format: 'x', version: 0 },
      { format: 'x', version: 1.5 },
      { format: 'x', version: 3 },
    ])
      expect(readRecord(third, damaged)).toMatchObject({ ok: false, reason: 'damaged' })
  })

  test('a migration that fails means a damaged record, and its reason is told', () => {
    const kind = {
      ...third,
      ladder: [
        () => {
          throw new Error('no gallons')
        },
        third.ladder[1]!,
      ],
    }
    expect(readRecord(kind, { format: 'x', version: 1 })).toEqual({
      ok: false,
      reason: 'damaged',
      message: 'is damaged (no gallons)',
    })
  })

  test('whole records pass', () => {
    expect(readRecord(TRIP, trip(wholeDraft()))).toMatchObject({ ok: true })
    expect(readRecord(LIBRARY, emptyLibrary())).toMatchObject({ ok: true })
    expect(
      readRecord(HISTORY, {
        format: 'pack-reckoner/history',
        version: 1,
        future: [],
        past: [{ label: 'x', at: 1, draft: wholeDraft(), typed: {} }],
      }),
    ).toMatchObject({ ok: true })
  })

  test('odd values inside a draft pass, for settle copes with them', () => {
    const odd = { ...wholeDraft(), carrier: { massKg: 'x' }, gear: [{ id: 'a', massKg: -1, colour: 3 }] }
    expect(readRecord(TRIP, trip(odd))).toMatchObject({ ok: true })
  })

  test('a draft whose lists are not lists of things with ids is damaged', () => {
    for (const draft of [
      { ...emptyDraft(), gear: 5 },
      { ...emptyDraft(), gear: [{}] },
      { ...emptyDraft(), packs: [{ id: 'p' }] },
      { carrier: {} },
      null,
    ])
      expect(readRecord(TRIP, trip(draft))).toMatchObject({ ok: false, reason: 'damaged' })
  })

  test('a trip may carry the terrain of its track, of at most 400 points; anything else is damaged', () => {
    const points = (count: number) =>
      Array.from({ length: count }, (_, i) => ({ km: i, eleM: i % 2 ? i : null }))
    const withProfile = (profile: unknown) => readRecord(TRIP, { ...trip(), profile })
    expect(withProfile(points(400))).toMatchObject({ ok: true, value: { profile: points(400) } })
    for (const damaged of [
      points(401),
      'hills',
      [{ km: -1, eleM: 0 }],
      [{ km: Number.NaN, eleM: 0 }],
      [{ km: 1 }],
      [{ km: 1, eleM: Number.POSITIVE_INFINITY }],
    ])
      expect(withProfile(damaged)).toMatchObject({ ok: false, reason: 'damaged' })
  })
})
