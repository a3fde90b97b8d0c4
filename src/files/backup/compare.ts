// What a backup holds against what is here, before anything changes: which trips and things are new, the same or
// different, which of two is the newer, and in words what differs.

import { cleanWords, type Draft, type DraftPack, fieldWord, tripName, withoutOwnFacts } from '../../plan'
import { type Base, type Packing, SHELF_LISTS, same, type Thing } from '../../plan/shelf'
import { counted, countText } from '../../units'
import { inOneGo, type Steps } from '../portions'
import type { Backup, BackupTrip, Contents } from './types'

export interface Difference {
  id: string
  name: string
  /** Which was changed later; null: not known. */
  newer: 'file' | 'here' | null
  /** What differs, in words: "12 items here, 14 in the file". */
  words: string[]
}

export interface Compared {
  /** Only in the file. */
  fresh: { id: string; name: string; words: string[] }[]
  same: { id: string; name: string }[]
  differ: Difference[]
  /** Only here. */
  here: { id: string; name: string }[]
}

export interface Comparison {
  trips: Compared
  /** Null: the file's shelf cannot be read. */
  shelf: Record<(typeof SHELF_LISTS)[number], Compared> | null
  /** What differs in the settings, in words. */
  settings: string[]
  /** There is no trip here and nothing on the shelf. */
  isEmptyHere: boolean
}

/** Contents alone decide: the same contents saved at different times are the same. */
export const sameAs = (a: unknown, b: unknown): boolean => same(a ?? null, b ?? null, isWrittenAlike)

/** Whether a backup has the same for both. */
function isWrittenAlike(a: unknown, b: unknown, field: string): boolean {
  if (typeof a === 'string' && typeof b === 'string') return cleanWords(a, field) === cleanWords(b, field)
  const isNumberOrNull = (value: unknown) => typeof value === 'number' || value === null
  return isNumberOrNull(a) && isNumberOrNull(b) && JSON.stringify(a) === JSON.stringify(b)
}

const tripContents = ({ draft, typed, profile, demo }: BackupTrip) => ({ draft, typed, profile, demo })

export const sameTrip = (a: BackupTrip, b: BackupTrip) => sameAs(tripContents(a), tripContents(b))
/** When a fact was changed last is no fact itself. */
export const sameThing = ({ changed: _a, ...a }: Thing, { changed: _b, ...b }: Thing) => sameAs(a, b)

/** Ours is the same as a pack of a file that says nothing of one's own, as files of before do not. */
export const samePack = (here: DraftPack, file: DraftPack) => {
  const facts = withoutOwnFacts(file)
  return sameAs(here, file) || (facts === file && sameAs(withoutOwnFacts(here), facts))
}

export const compareBackup = (here: Contents, file: Backup): Comparison => inOneGo(comparing(here, file))

/** As `compareBackup`, trip by trip. */
export function* comparing(here: Contents, { trips, shelf, settings }: Backup): Steps<Comparison> {
  return {
    trips: yield* compared(here.trips, trips, TRIPS),
    shelf: shelf && {
      things: yield* compared(here.shelf.things, shelf.things, THINGS),
      bases: yield* compared(here.shelf.bases, shelf.bases, BASES),
      packings: yield* compared(here.shelf.packings, shelf.packings, PACKINGS),
      packs: yield* compared(here.shelf.packs, shelf.packs, PACKS),
    },
    settings: settingsWords(here, settings),
    isEmptyHere: isEmpty(here),
  }
}

export const isEmpty = ({ trips, shelf }: Contents) =>
  trips.length === 0 && SHELF_LISTS.every(list => shelf[list].length === 0)

/** Whether merging the file would change nothing here. */
export function bringsNothing({ trips, shelf, settings, isEmptyHere }: Comparison): boolean {
  const parts = shelf ? [trips, ...SHELF_LISTS.map(list => shelf[list])] : [trips]
  const isSame = parts.every(({ fresh, differ }) => fresh.length + differ.length === 0)
  return isSame && (settings.length === 0 || !isEmptyHere)
}

interface Sort<T> {
  nameOf: (entry: T) => string
  isSame: (a: T, b: T) => boolean
  /** When it was changed last, ms since 1970; 0: not known. */
  timeOf: (entry: T) => number
  holds: (entry: T) => string[]
  differs: (here: T, file: T) => string[]
}

function* compared<T extends { id: string }>(here: T[], file: T[], sort: Sort<T>): Steps<Compared> {
  const byId = new Map(here.map(entry => [entry.id, entry]))
  const inFile = new Set(file.map(({ id }) => id))
  const named = (entry: T) => ({ id: entry.id, name: sort.nameOf(entry) })
  const found: Compared = {
    fresh: [],
    same: [],
    differ: [],
    here: here.filter(({ id }) => !inFile.has(id)).map(named),
  }
  for (const entry of file) {
    yield
    const ours = byId.get(entry.id)
    if (!ours) found.fresh.push({ ...named(entry), words: sort.holds(entry) })
    else if (sort.isSame(ours, entry)) found.same.push(named(entry))
    else {
      const [mine, theirs] = [sort.timeOf(ours), sort.timeOf(entry)]
      const newer = mine === theirs ? null : mine > theirs ? 'here' : 'file'
      found.differ.push({ ...named(ours), newer, words: sort.differs(ours, entry) })
    }
  }
  return found
}

const LISTS = [
  ['item', (draft: Draft) => draft.gear],
  ['stop', (draft: Draft) => draft.trip.stops],
  ['pack', (draft: Draft) => draft.packs],
] as const

const TRIPS: Sort<BackupTrip> = {
  nameOf: ({ draft }) => tripName(draft),
  isSame: sameTrip,
  timeOf: ({ changedAt }) => changedAt,
  holds: ({ draft }) =>
    LISTS.flatMap(([what, of]) => (of(draft).length > 0 ? counted(of(draft).length, what) : [])),
  differs: (here, file) => {
    const { stops: _here, ...habitsHere } = here.draft.trip
    const { stops: _file, ...habitsFile } = file.draft.trip
    return [
      sameAs(here.draft.name, file.draft.name) ? '' : `“${file.draft.name ?? ''}” in the file`,
      ...LISTS.map(([what, of]) => listWords(what, of(here.draft), of(file.draft))),
      sameAs(here.draft.carrier, file.draft.carrier) ? '' : 'the hiker',
      sameAs(peopleIn(here.draft), peopleIn(file.draft)) ? '' : 'the people, or who carries what',
      sameAs(habitsHere, habitsFile) ? '' : 'pace, water or meals',
      sameAs(here.draft.settings, file.draft.settings) ? '' : 'settings of the trip',
      sameAs(here.typed, file.typed) ? '' : 'text that is no number yet',
      sameAs(here.profile, file.profile) ? '' : 'the terrain of the track',
      here.demo === file.demo ? '' : 'whether it is the demo',
    ].filter(Boolean)
  },
}

const peopleIn = ({ people, split, shared }: Draft) => ({ people, split, shared })

function listWords(what: string, here: { id: string }[], file: { id: string }[]): string {
  if (sameAs(here, file)) return ''
  if (here.length !== file.length)
    return `${counted(here.length, what)} here, ${countText(file.length)} in the file`
  const byId = new Map(here.map(entry => [entry.id, entry]))
  const changed = file.filter(entry => !sameAs(byId.get(entry.id), entry)).length
  return changed > 0 ? `${changed} of ${counted(here.length, what)} differ` : `the order of the ${what}s`
}

const THINGS: Sort<Thing> = {
  nameOf: ({ item }) => item.name || 'Item without a name',
  isSame: sameThing,
  timeOf: ({ changed }) => Object.values(changed).reduce((last, at) => Math.max(last, at ?? 0), 0),
  holds: () => [],
  differs: (here, file) => {
    const words = differingFields(here.item, file.item).map(fieldWord)
    const marks = (['note', 'weighedOn', 'retired'] as const).filter(mark => !sameAs(here[mark], file[mark]))
    return [...new Set([...words, ...marks.map(mark => MARK_WORDS[mark])])]
  },
}

/** What the shelf alone says of a thing. */
const MARK_WORDS = {
  note: 'note',
  weighedOn: 'the day it was weighed',
  retired: 'whether it is in use',
}

const BASES: Sort<Base> = {
  nameOf: ({ name }) => name || 'Kit without a name',
  isSame: sameAs,
  timeOf: () => 0,
  holds: ({ lines }) => [counted(lines.length, 'item')],
  differs: (here, file) => [
    here.lines.length === file.lines.length
      ? 'its name or its items'
      : `${counted(here.lines.length, 'item')} here, ${file.lines.length} in the file`,
  ],
}

const PACKINGS: Sort<Packing> = {
  nameOf: ({ gear, pack }) => `${gear} in ${pack}`,
  isSame: sameAs,
  timeOf: ({ at }) => at,
  holds: () => [],
  differs: () => ['what was packed'],
}

const PACKS: Sort<DraftPack> = {
  nameOf: ({ name }) => name || 'Pack without a name',
  isSame: samePack,
  timeOf: () => 0,
  holds: () => [],
  differs: (here, file) => differingFields(here, file).map(fieldWord),
}

/** The names of the fields in which two objects differ. */
function differingFields(here: object, file: object): string[] {
  const [a, b] = [here, file] as Record<string, unknown>[]
  return [...new Set([...Object.keys(a!), ...Object.keys(b!)])].filter(field => !sameAs(a![field], b![field]))
}

const SYSTEMS = { metric: 'metric units', us: 'US units' }
const THEMES = { auto: 'light as the device', light: 'always light', dark: 'always dark' }

function settingsWords(here: Contents, file: Backup['settings']): string[] {
  if (!file) return []
  const { system, theme, brightSun, largeTargets, packColumns } = here.settings
  return [
    system === file.system ? '' : SYSTEMS[file.system],
    theme === file.theme ? '' : THEMES[file.theme],
    !brightSun === !file.brightSun ? '' : `bright sun ${file.brightSun ? 'on' : 'off'}`,
    !largeTargets === !file.largeTargets ? '' : `large targets ${file.largeTargets ? 'on' : 'off'}`,
    !file.packColumns || sameAs(packColumns, file.packColumns) ? '' : 'columns of the table of packs',
  ].filter(Boolean)
}
