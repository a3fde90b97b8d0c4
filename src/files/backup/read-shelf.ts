// The shelf and the settings of a backup. Things, bases and packings are checked one by one; what is damaged is left out
// and said. A shelf of an older version climbs to the current one here.

import * as z from 'zod/mini'
import { CAPS, checkDraft, type DraftPack, withoutOldNo } from '../../plan'
import {
  type Base,
  factsOf,
  type OwnFigures,
  ownerIn,
  ownersOf,
  type Packing,
  SHELF_FORMAT,
  SHELF_VERSION,
  type ShelfContents,
  type Thing,
} from '../../plan/shelf'
import { BACKUP_CAPS } from './limits'
import { listed } from './read-trips'
import type { BackupSettings } from './types'

const words = (most: number) => z.string().check(z.maxLength(most))
const id = z.string().check(z.minLength(1), z.maxLength(200))
const opt = z.exactOptional
const ms = z.number().check(z.gte(0))
const more = z.number().check(z.gte(0))

const thingShape = z.object({
  id,
  item: z.record(z.string(), z.unknown()),
  note: opt(words(BACKUP_CAPS.noteChars)),
  weighedOn: opt(z.string().check(z.regex(/^\d{4}-\d\d-\d\d$/))),
  retired: opt(z.boolean()),
  changed: z.record(z.string(), ms),
})

const baseShape = z.object({
  id,
  name: words(1000),
  lines: z
    .array(
      z.object({
        thing: id,
        count: opt(more),
        stow: opt(z.enum(['main-body', 'outside-pocket', 'strapped-on', 'worn'])),
        inside: opt(id),
        atHome: opt(z.boolean()),
      }),
    )
    .check(z.maxLength(BACKUP_CAPS.lines)),
})

const packingShape = z.object({
  id,
  at: ms,
  gear: words(1000),
  pack: words(1000),
  bodyLitres: more,
  said: z.union([
    z.object({ how: z.literal('full'), fullness: more }),
    z.object({ how: z.literal('over'), overLitres: more }),
    z.object({ how: z.literal('box'), lengthCm: more, widthCm: more, heightCm: more }),
  ]),
  reckonedLitresAtFactor1: more,
  factor: more,
  list: opt(
    z.object({
      packFrom: z.enum(['test-method', 'measured', 'stated', 'guess']),
      d: more,
      things: z
        .array(
          z.object({
            id,
            litres: more,
            litresFrom: z.enum(['filled', 'dimensions', 'stated', 'guess', 'kind']),
            u: more,
          }),
        )
        .check(z.maxLength(BACKUP_CAPS.lines)),
    }),
  ),
})

const packShape = z.looseObject({
  id,
  setups: z.array(z.looseObject({ id })).check(z.maxLength(CAPS.setups)),
})

const some = z.record(words(40), z.number()).check(z.refine(values => Object.keys(values).length <= 20))
const figuresShape = z.strictObject({
  under: opt(some),
  measure: opt(z.strictObject({ name: words(1000), powers: some })),
})

const shelfShape = z.object({
  format: z.literal(SHELF_FORMAT),
  version: z.literal([1, 2, SHELF_VERSION]),
  things: z.array(z.unknown()),
  bases: z.array(z.unknown()),
  packings: z.array(z.unknown()),
  // Before version 3 they lay with the trips.
  packs: opt(z.array(z.unknown())),
  figures: opt(z.unknown()),
  typed: z.record(z.string(), words(1000)),
})

/** The parts of a shelf that can be read; null where it is none, and what is here is to stay. */
export function readShelf(record: unknown): { shelf: ShelfContents | null; leftOut: string[] } {
  const isOld = (record as { version?: unknown } | null)?.version === 1
  const found = shelfShape.safeParse(isOld ? withoutOldNo(record) : record)
  if (!found.success) return { shelf: null, leftOut: ['The shelf cannot be read: yours stays as it is.'] }
  const leftOut: string[] = []
  const { bases, packings, packs = [], typed } = found.data
  const things = readList(found.data.things, thingShape, 'Item', leftOut) as unknown as Thing[]
  const lists = {
    things: withSoundFacts(things, leftOut),
    bases: readList(bases, baseShape, 'Kit', leftOut) as Base[],
    packings: readList(packings, packingShape, 'Packing', leftOut) as Packing[],
    packs: withSoundPacks(readList(packs, packShape, 'Pack', leftOut) as DraftPack[], leftOut),
  }
  const owners = ownersOf(lists)
  const figures = figuresShape.safeParse(found.data.figures)
  if (found.data.figures !== undefined && !figures.success)
    leftOut.push('Your figures for packs cannot be read: they are left out.')
  return {
    shelf: {
      ...lists,
      ...(figures.success && { figures: figures.data as OwnFigures }),
      typed: Object.fromEntries(Object.entries(typed).filter(([path]) => owners.has(ownerIn(path)))),
    },
    leftOut,
  }
}

type Shape = typeof thingShape | typeof baseShape | typeof packingShape | typeof packShape

function readList<S extends Shape>(list: unknown[], shape: S, what: string, leftOut: string[]): z.infer<S>[] {
  const taken = new Set<string>()
  return list.flatMap((entry, i) => {
    const found = shape.safeParse(entry)
    const place = found.success ? '' : found.error.issues[0]?.path.join('/')
    const why = found.success && taken.has(found.data.id) ? 'is in the file twice' : `is damaged (${place})`
    if (!found.success || taken.has(found.data.id)) {
      leftOut.push(`${what} ${i + 1}${nameIn(entry)} ${why}: it is left out.`)
      return []
    }
    taken.add(found.data.id)
    return [found.data as z.infer<S>]
  })
}

/** What a thing's facts hold that no item could is taken out: they are an item's fields, and are checked as such. */
function withSoundFacts(things: Thing[], leftOut: string[]): Thing[] {
  const gear = things.map(({ item }, i) => ({ ...item, id: String(i) }))
  const checked = checkDraft({ carrier: {}, trip: { stops: [] }, gear, packs: [] })
  if (!checked.ok) return []
  const bad = checked.leftOut.map(path => path.replace(/^Item (?=\d)/, 'thing '))
  if (bad.length > 0) leftOut.push(`The shelf: ${listed(bad)} cannot be read.`)
  return things.map((thing, i) => {
    const item = factsOf(checked.draft.gear[i]!)
    // Names that every object has are no facts of a thing.
    const changed = Object.entries(thing.changed).filter(([field]) => !(field in {}))
    return { ...thing, item, changed: Object.fromEntries(changed) }
  })
}

/** As many at a time as a plan may have: they are a plan's packs, and are checked as such. */
function withSoundPacks(packs: DraftPack[], leftOut: string[]): DraftPack[] {
  const sound: DraftPack[] = []
  const bad: string[] = []
  for (let i = 0; i < packs.length; i += CAPS.packs) {
    const part = packs.slice(i, i + CAPS.packs)
    const checked = checkDraft({ carrier: {}, trip: { stops: [] }, gear: [], packs: part })
    if (!checked.ok) continue
    sound.push(...checked.draft.packs)
    bad.push(...checked.leftOut)
  }
  if (bad.length > 0) leftOut.push(`The packs: ${listed(bad)} cannot be read.`)
  return sound
}

const settingsShape = z.object({
  system: z.enum(['metric', 'us']),
  theme: z.enum(['auto', 'light', 'dark']),
  brightSun: opt(z.boolean()),
  largeTargets: opt(z.boolean()),
  packColumns: opt(z.array(words(BACKUP_CAPS.columnChars)).check(z.maxLength(BACKUP_CAPS.columns))),
})

export function readSettings(value: unknown): BackupSettings | null {
  const found = settingsShape.safeParse(value)
  return found.success ? found.data : null
}

function nameIn(entry: unknown): string {
  const {
    item,
    name = item?.name,
    gear = name,
  } = (entry ?? {}) as {
    item?: { name?: unknown }
    name?: unknown
    gear?: unknown
  }
  return typeof gear === 'string' && gear ? ` “${gear.slice(0, 60)}”` : ''
}
