// Rows put together as packs: rows of one name and an equal main body are its set-ups, two masses in a row are two.

import { type DraftPack, type DraftSetup, groupedBy, mainBodyOf, tagsIn, withMainBody } from '../../plan'
import type { CellValue } from './catalogue'
import { PACK_FIELD_NAMES, PACK_FIELDS, type PackFieldName, REMOVABLE } from './packs-fields'
import type { RowProblem } from './types'

export type PackValues = Partial<Record<PackFieldName, CellValue>>

/** What the cells of one row say. */
export interface PackRow {
  /** From 1, as a spreadsheet counts. */
  row: number
  values: PackValues
}

export type SetupFacts = Omit<DraftSetup, 'id'>
export type PackFacts = Omit<DraftPack, 'id' | 'setups'> & { name: string; setups: SetupFacts[] }

export interface TablePack {
  /** The rows it was read from, from 1. */
  rows: number[]
  pack: PackFacts
}

interface Joined {
  packs: TablePack[]
  problems: RowProblem[]
  doubts: string[]
}

export function joinRows(rows: readonly PackRow[]): Joined {
  const joined: Joined = { packs: [], problems: [], doubts: [] }
  const byKey = new Map<string, TablePack>()
  const guessed: number[] = []
  const doubled: number[] = []
  for (const { row, values } of rows) {
    const contradiction = contradictionIn(values)
    if (contradiction) {
      joined.problems.push({ row, column: null, ...contradiction })
      continue
    }
    const pack = withBody(factsOf(values))
    if (pack.bodyFrom === 'guess' && values.bodyFrom === undefined) guessed.push(row)
    const key = `${packKey(pack.name)}\n${pack.bodyLitres}`
    const before = byKey.get(key)
    if (before) {
      const differing = differingIn(before.pack, pack)
      if (differing)
        joined.doubts.push(
          `Row ${row} differs from row ${before.rows[0]} in ${differing}: what row ${before.rows[0]} says is taken.`,
        )
      if (!addSetups(before, pack, row)) doubled.push(row)
      continue
    }
    const found = { rows: [row], pack }
    byKey.set(key, found)
    joined.packs.push(found)
  }
  for (const { pack } of joined.packs) nameSetups(pack.setups)
  joined.doubts.push(
    ...(guessed.length > 0
      ? [`${rowsText(guessed)}: the main body is taken as 85 % of the total, our estimate.`]
      : []),
    ...(doubled.length > 0 ? [`${rowsText(doubled)}: the same as a row before, and left out.`] : []),
    ...doubtsOf(joined.packs),
  )
  return joined
}

/** Names are the same whatever their case and blanks. */
export const packKey = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ').trim()

const rowsText = (rows: readonly number[]): string => `${rows.length > 1 ? 'Rows' : 'Row'} ${rows.join(', ')}`

/** What in a row cannot be true together. */
function contradictionIn({
  body,
  total,
  outside,
  frame,
  massFrameOut,
}: PackValues): Pick<RowProblem, 'text' | 'why'> | null {
  if (typeof total === 'number' && typeof body === 'number' && body > total)
    return { text: `${body}, ${total}`, why: 'The main body is larger than the total: mend one of them.' }
  if (
    typeof total === 'number' &&
    typeof outside === 'number' &&
    body === undefined &&
    !mainBodyOf(total, outside).ok
  )
    return {
      text: `${total}, ${outside}`,
      why: 'The pockets are as large as the whole: mend the pockets or the total.',
    }
  if (frame === 'frameless' && massFrameOut !== undefined)
    return { text: 'frameless', why: 'It has no frame and yet a mass without it: mend one of them.' }
  return null
}

/** What a row says, as a pack with one set-up or two. */
function factsOf(values: PackValues): PackFacts & { totalLitres?: number } {
  const of = { pack: {} as Record<string, unknown>, setup: {} as Record<string, unknown> }
  for (const field of PACK_FIELD_NAMES) {
    const [part, key] = PACK_FIELDS[field].path ?? []
    const value = values[field]
    if (part && key && value !== undefined)
      of[part as 'pack' | 'setup'][key] = field === 'tags' ? tagsIn(String(value)) : value
  }
  return { ...(of.pack as unknown as PackFacts), setups: setupsOf(of.setup as SetupFacts, values) }
}

function setupsOf(setup: SetupFacts, values: PackValues): SetupFacts[] {
  const isRemovable = values.frame === REMOVABLE || values.removable === true
  const { massFrameOut, ratedFrameOut } = values
  if (!isRemovable && massFrameOut === undefined) return [setup]
  const { massKg: _mass, ratedKg: _rated, name, ...both } = setup
  const named = (which: string) => (name ? `${name}, ${which}` : which)
  return [
    { ...setup, name: named('frame in'), frame: 'framed' },
    {
      ...both,
      name: named('frame out'),
      frame: 'frameless',
      ...(typeof massFrameOut === 'number' && { massKg: massFrameOut }),
      ...(typeof ratedFrameOut === 'number' && { ratedKg: ratedFrameOut }),
    },
  ]
}

/** The main body, where only the whole is told. */
function withBody({ totalLitres, ...pack }: PackFacts & { totalLitres?: number }): PackFacts {
  if (totalLitres === undefined) return pack
  // What the main body leaves of the total are the pockets.
  if (pack.bodyLitres !== undefined)
    return pack.outsideLitres === undefined && pack.collarLitres === undefined
      ? { ...pack, outsideLitres: totalLitres - pack.bodyLitres }
      : pack
  const { outsideLitres } = pack
  const { bodyLitres, bodyFrom } = withMainBody({
    name: pack.name,
    totalLitres,
    ...(outsideLitres !== undefined && { outsideLitres }),
    setups: [],
  })
  return { ...pack, bodyLitres, ...(bodyFrom && { bodyFrom }) }
}

/** Another row of the same pack: its set-ups, and what the rows before have not said of the pack. False: it is a row before. */
function addSetups(known: TablePack, { setups, ...facts }: PackFacts, row: number): boolean {
  known.rows.push(row)
  const isThere = (setup: SetupFacts) => known.pack.setups.some(other => isSame(other, setup))
  if (setups.every(isThere)) return false
  known.pack = { ...facts, ...known.pack, setups: [...known.pack.setups, ...setups] }
  return true
}

const isSame = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)

/** What two rows of one pack say otherwise of the pack itself, in words of its columns; null where nothing is. */
function differingIn(known: PackFacts, { setups: _setups, name: _name, ...facts }: PackFacts): string | null {
  const fields = PACK_FIELD_NAMES.filter(field => {
    const [part, key] = PACK_FIELDS[field].path ?? []
    const [a, b] = [known[key as keyof PackFacts], facts[key as keyof typeof facts]]
    return part === 'pack' && key !== 'name' && a !== undefined && b !== undefined && !isSame(a, b)
  })
  return fields.length > 0 ? fields.map(field => PACK_FIELDS[field].label).join(', ') : null
}

/** A set-up without a name has that of its frame; a single one is as sold. */
function nameSetups(setups: SetupFacts[]) {
  const taken = new Set<string>()
  for (const setup of setups) {
    const usual = setups.length === 1 ? 'as sold' : setup.frame ? frameWord(setup.frame) : 'set-up'
    const name = setup.name ?? usual
    let free = name
    for (let i = 2; taken.has(free); i++) free = `${name} ${i}`
    taken.add(free)
    setup.name = free
  }
}

const frameWord = (frame: NonNullable<SetupFacts['frame']>) => (frame === 'framed' ? 'frame in' : 'frame out')

/** Packs of one name are left apart only where their litres differ. */
const doubtsOf = (packs: readonly TablePack[]): string[] =>
  [...groupedBy(packs, ({ pack }) => packKey(pack.name)).values()]
    .filter(alike => alike.length > 1)
    .map(
      alike =>
        `${rowsText(alike.flatMap(({ rows }) => rows))}: “${alike[0]!.pack.name}” with different litres is taken as different packs.`,
    )

/** What a set-up lacks to be judged, in words of its columns; empty where nothing is. */
export function lacking(pack: PackFacts, setup: SetupFacts): PackFieldName[] {
  const lacks: PackFieldName[] = []
  if (pack.bodyLitres === undefined) lacks.push('body')
  if (setup.massKg === undefined)
    lacks.push(setup.frame === 'frameless' && isWithFramed(pack) ? 'massFrameOut' : 'mass')
  if (setup.frame === undefined) lacks.push('frame')
  return lacks
}

const isWithFramed = ({ setups }: PackFacts) => setups.some(({ frame }) => frame === 'framed')
