// The doors for plans, links, tracks, pasted lists and typed figures, tried with real files that were changed.

import { readdirSync, readFileSync } from 'node:fs'
import { deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { asChosen, keptStops, toDraftStops } from '../../src/files/gpx/add-to-plan'
import { readGpx } from '../../src/files/gpx/read'
import { proposeStops } from '../../src/files/gpx/split'
import { measureFile } from '../../src/files/gpx/track'
import { addListed, readList } from '../../src/files/list'
import { readLink } from '../../src/files/share'
import { toBase64url } from '../../src/files/share/base64url'
import { crc32 } from '../../src/files/share/crc32'
import { sealed } from '../../src/files/share/link'
import {
  type Draft,
  defaults,
  emptyDraft,
  parseAnyText,
  parseForeign,
  settle,
  settleAny,
} from '../../src/plan'
import { readRating } from '../../src/plan/tag'
import { editText, formatQuantity, parseQuantity, type Quantity } from '../../src/units'
import worked from '../engine/fixtures/worked-plan.json'
import { anyDraft, anyTyped } from '../plan/drafts'
import { type Door, expectPlanOrProblems, expectReckons, expectWellSaid, unfinite } from '../tools/doors'
import { packList } from './fuzz-packs'
import { mutated, mutatedObject, NASTY_TEXT, nastyText } from './nasty'

/** Small enough to be tried many times: what comes in is real, but there is less of it. */
const small = { ...demo, gear: demo.gear.slice(0, 6), packs: demo.packs.slice(0, 1) }
const plans = [small, { ...worked, gear: worked.gear.slice(0, 8) }, { ...demo, gear: [], packs: [] }]
const planTexts = [...plans.map(plan => JSON.stringify(plan)), JSON.stringify(small, null, 1)]

const system = fc.constantFrom('metric' as const, 'us' as const)

const planText: Door = {
  name: 'the text of a plan file',
  property: fc.property(mutated(planTexts), text => expectPlanOrProblems(parseAnyText(text), text)),
}

const planObject: Door = {
  name: 'a plan with other values in its fields',
  property: fc.property(mutatedObject(plans), plan =>
    expectPlanOrProblems(parseForeign(plan), JSON.stringify(plan)),
  ),
}

const draft: Door = {
  name: 'a draft with anything in it',
  cost: 2,
  property: fc.property(fc.oneof(anyDraft, mutatedObject(plans)), anyTyped, (given, typed) => {
    const { document, leftOut } = settleAny(given as Draft, typed)
    expectReckons(document)
    for (const { message } of leftOut) expect(message).toMatch(/\S/)
  }),
}

const linkOf = (bytes: Uint8Array, sum = crc32(bytes)) =>
  `#plan=1.${toBase64url(sealed(deflateRawSync(bytes), sum))}`
const utf8 = new TextEncoder()

const link: Door = {
  name: 'the bytes of a link',
  property: fc.asyncProperty(
    fc.oneof(
      mutated(planTexts).map(text => linkOf(utf8.encode(text))),
      mutated(planTexts.map(text => linkOf(utf8.encode(text)))),
      fc.uint8Array({ maxLength: 400 }).map(bytes => `#plan=1.${toBase64url(bytes)}`),
      fc
        .tuple(fc.uint8Array({ maxLength: 300 }), fc.nat(3))
        .map(([bytes, off]) => linkOf(bytes, crc32(bytes) ^ off)),
    ),
    async fragment => {
      const read = await readLink(fragment)
      if (read.ok) expectReckons(read.document)
      else expectWellSaid(read.message, fragment.startsWith('#plan=1.') ? 'invalid' : fragment)
    },
  ),
}

const tracks = new URL('../hostile/gpx/', import.meta.url)
const gpxTexts = readdirSync(tracks).map(name => readFileSync(new URL(name, tracks), 'utf8'))
const gpxPieces = fc.constantFrom(
  ...[
    '<trk>',
    '</trk>',
    '<trkseg>',
    '<trkpt lat="1" lon="1">',
    '</trkpt>',
    '<ele>1e400</ele>',
    '<ele>-0</ele>',
  ],
  ...[
    'lat="-91"',
    'lon="1e5"',
    'lat="NaN"',
    '<!DOCTYPE x>',
    '<!ENTITY a "b">',
    '&a;',
    '<rte>',
    '<wpt lat="0" lon="0"/>',
  ],
)

const gpx: Door = {
  name: 'the text of a track file',
  property: fc.asyncProperty(
    mutated(gpxTexts),
    fc.array(gpxPieces, { maxLength: 3 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    async (text, pieces, at) => {
      const i = Math.floor(at * text.length)
      const read = await readGpx(new Blob([text.slice(0, i), ...pieces, text.slice(i)]))
      if (!read.ok) {
        expectWellSaid(read.message, text)
        return
      }
      const measured = measureFile(read.file)
      for (const track of measured.ok ? measured.tracks : []) {
        const { sums, profile, passes, km } = track
        expect(unfinite({ sums, profile, passes, km })).toEqual([])
        const proposal = proposeStops(track, { by: 'days', days: 3 }, defaults.PACE)
        if (!proposal.ok) continue
        const stops = toDraftStops(keptStops(track, asChosen(proposal.stops)), () => 'stop')
        expectReckons(settle({ ...emptyDraft(), trip: { stops } }).document)
      }
    },
  ),
}

const lists = [
  'Shelter:\nTent 1,5 kg 6 L\n- 8 x peg 112 g total\nSocks x2 75 g (worn)\nTotal 8500 g',
  'Category\tItem\tQty\tWeight (g)\tVolume (L)\nShelter\tTent\t1\t1500\t4,5\n\tPeg\t8\t14\t0.1',
  '"Tent, red";1500;6 L\nBoots 2 lb 3 oz\n• Stove ½ lb\n☐ 1. Mug (60 g)',
]

const list: Door = {
  name: 'a pasted list',
  cost: 2,
  property: fc.property(mutated(lists), system, (text, read) => {
    const result = readList(text, { system: read })
    if (!result.ok) {
      expectWellSaid(result.message, text)
      return
    }
    for (const row of result.rows) if (!row.ok) expectWellSaid(row.why, text)
    const taken = result.rows.flatMap(row => (row.ok ? [{ row, kind: null }] : []))
    let n = 0
    const { document, leftOut } = settle(addListed(emptyDraft(), taken, () => `i${++n}`))
    expect(document.gear).toHaveLength(taken.length)
    // What a list does not say is missing; nothing that it says is refused.
    for (const { message } of leftOut.filter(({ path }) => path.startsWith('gear')))
      expect(message).toMatch(/: no (mass|litres) yet/)
    expectReckons(document)
  }),
}

const KINDS: Quantity[] = [
  'mass',
  'volume',
  'distance',
  'climb',
  'length',
  'temperature',
  'duration',
  'speed',
  'flow',
]
const MORE: Quantity[] = [
  'verticalSpeed',
  'count',
  'share',
  'number',
  'money',
  'density',
  'energyDensity',
  'gramsPerKg',
]
const typedPiece = fc.oneof(
  nastyText,
  fc.constantFrom(
    '1',
    '12',
    '0',
    '.',
    ',',
    '/',
    '-',
    '+',
    ' ',
    "'",
    '"',
    ':',
    '°',
    'F',
    'kg',
    'g',
    'lb',
    'oz',
    'st',
  ),
  fc.constantFrom(
    'L',
    'mL',
    'cu in',
    'fl oz',
    'km',
    'mi',
    'ft',
    'in',
    'h',
    'min',
    '%',
    'kcal',
    'to',
    '–',
    '…',
    '...',
  ),
)

const quantity: Door = {
  name: 'a typed figure',
  property: fc.property(
    fc.oneof(
      fc.array(typedPiece, { maxLength: 8 }).map(pieces => pieces.join('')),
      fc.string({ unit: 'binary' }),
    ),
    fc.constantFrom(...KINDS, ...MORE),
    system,
    (text, kind, read) => {
      const parsed = parseQuantity(kind, text, { system: read })
      const rating = readRating(text, read)
      if (!rating.ok) expectWellSaid(rating.message, text)
      else expect(unfinite(rating)).toEqual([])
      if (!parsed.ok) {
        expectWellSaid(parsed.message, text)
        return
      }
      expect(unfinite(parsed)).toEqual([])
      if (parsed.empty) return
      expect(Object.is(parsed.value, -0)).toBe(false)
      if (kind !== 'temperature') expect(parsed.value).toBeGreaterThanOrEqual(0)
      expect(formatQuantity(kind, parsed.value, { system: read })).not.toMatch(/NaN|undefined/)
      const shown = editText(kind, parsed.value, { system: read })
      expect(parseQuantity(kind, shown, { system: read })).toMatchObject({ ok: true, empty: false })
    },
  ),
}

/** Names that objects know by themselves, and others that could be taken for something else. */
const IDS = [...new Set(NASTY_TEXT.filter(text => text.trim() && text.length <= 200))]

const ids: Door = {
  name: 'ids and groups that are names of other things',
  cost: 10,
  property: fc.property(
    fc.constantFrom(...plans),
    fc.shuffledSubarray(IDS, { minLength: 20, maxLength: 40 }),
    (plan, names) => {
      const to = new Map(plan.gear.map(({ id }, i) => [id, names[i] ?? id]))
      const gear = plan.gear.map((item, i) => ({
        ...item,
        id: to.get(item.id)!,
        group: names[i]!,
        ...('inside' in item && typeof item.inside === 'string' && { inside: to.get(item.inside) }),
      }))
      const { document } = settle({ ...plan, gear } as unknown as Draft)
      const before = settle(plan as unknown as Draft)
      expect(expectReckons(document)?.moments).toEqual(expectReckons(before.document)?.moments)
    },
  ),
}

export const doors: Door[] = [planText, planObject, draft, link, packList, gpx, list, quantity, ids]
