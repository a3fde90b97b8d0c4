// What of a table of packs is new, what is there already, and what it would change: a table brought in again updates and
// doubles nothing. Pure; ids come from outside.

import { type Draft, type DraftPack, type DraftSetup, FIELDS, type FieldRow, groupedBy } from '../../plan'
import { packKey, type SetupFacts, type TablePack } from './packs-join'

/** A fact that the table says otherwise. A whole set-up that is new has `from` undefined and its name as `to`. */
export interface PackChange {
  /** The set-up it is of; null: of the pack itself. */
  setup: string | null
  field: string
  row: FieldRow
  from: unknown
  to: unknown
}

export interface ChangedPack {
  rows: number[]
  /** As it would be. */
  pack: DraftPack
  changes: PackChange[]
}

export interface ComparedPacks {
  added: TablePack[]
  changed: ChangedPack[]
  /** Those that are here already, fact for fact. */
  same: TablePack[]
}

/** What the packs of a table would do to those that are there. */
export function compareWithPacks(
  known: readonly DraftPack[],
  read: readonly TablePack[],
  newId: () => string,
): ComparedPacks {
  const byName = groupedBy(known, pack => packKey(pack.name ?? ''))
  const readByName = groupedBy(read, ({ pack }) => packKey(pack.name))
  const compared: ComparedPacks = { added: [], changed: [], same: [] }
  const taken = new Set<string>()
  for (const each of read) {
    const { pack } = each
    const named = (byName.get(packKey(pack.name)) ?? []).filter(({ id }) => !taken.has(id))
    const alone = named.length === 1 && readByName.get(packKey(pack.name))!.length === 1
    const found =
      named.find(({ bodyLitres }) => isSame(bodyLitres, pack.bodyLitres)) ?? (alone ? named[0] : undefined)
    if (!found) {
      compared.added.push(each)
      continue
    }
    taken.add(found.id)
    const { pack: next, changes } = updated(found, each, newId)
    if (changes.length > 0) compared.changed.push({ rows: each.rows, pack: next, changes })
    else compared.same.push(each)
  }
  return compared
}

const PACK_ROWS: Readonly<Record<string, FieldRow>> = FIELDS.pack
const SETUP_ROWS: Readonly<Record<string, FieldRow>> = FIELDS.setup

/** The pack with what the table says; what the table does not say stays. */
function updated(known: DraftPack, { pack }: TablePack, newId: () => string) {
  const { setups, name: _name, ...facts } = pack
  const changes: PackChange[] = otherwise(known, withSource(known, facts), PACK_ROWS).map(change => ({
    ...change,
    setup: null,
  }))
  const next = { ...known, ...changed(changes) }
  const left = [...known.setups]
  for (const setup of setups) {
    const at = matching(left, setup, setups.length === 1 && known.setups.length === 1)
    const here = left[at]
    if (!here) {
      changes.push({
        setup: setup.name ?? null,
        field: 'setup',
        row: FIELDS.setup.name,
        from: undefined,
        to: setup.name,
      })
      next.setups = [...next.setups, { ...setup, id: newId() }]
      continue
    }
    left.splice(at, 1)
    const { name, ...said } = setup
    const found = otherwise(here, said, SETUP_ROWS).map(change => ({
      ...change,
      setup: here.name ?? name ?? null,
    }))
    changes.push(...found)
    next.setups = next.setups.map(each => (each.id === here.id ? { ...each, ...changed(found) } : each))
  }
  return { pack: next, changes }
}

/** Litres from elsewhere are as stated there; a guess is no news of litres that are known. */
function withSource(known: DraftPack, facts: Omit<TablePack['pack'], 'name' | 'setups'>) {
  const { bodyLitres, bodyFrom, ...rest } = facts
  if (bodyFrom === 'guess' && known.bodyLitres !== undefined && known.bodyFrom !== 'guess') return rest
  const isNew = bodyLitres !== undefined && !isSame(known.bodyLitres, bodyLitres)
  return isNew && bodyFrom === undefined ? { ...facts, bodyFrom: FIELDS.pack.bodyFrom.usual } : facts
}

/** The set-up of the same name, else of the same frame; a single one stands for a single one. */
function matching(known: readonly DraftSetup[], { name, frame }: SetupFacts, single: boolean): number {
  if (single) return 0
  const named = known.findIndex(each => packKey(each.name ?? '') === packKey(name ?? ''))
  return named >= 0 ? named : known.findIndex(each => each.frame === frame && frame !== undefined)
}

function otherwise(
  known: object,
  said: object,
  rows: Readonly<Record<string, FieldRow>>,
): Omit<PackChange, 'setup'>[] {
  return Object.entries(said).flatMap(([field, to]) => {
    const row = rows[field]
    const from = (known as Record<string, unknown>)[field]
    return !row || isSame(from ?? row.usual, to) ? [] : [{ field, row, from, to }]
  })
}

const changed = (changes: readonly Omit<PackChange, 'setup'>[]) =>
  Object.fromEntries(changes.map(({ field, to }) => [field, to]))

/** Figures that differ in their last bits alone come from the same text in another unit. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
  return a === b
}

/** The draft with the packs that are taken: new ones at the end, changed ones in their places. */
export function takePacks(
  draft: Draft,
  { added, changed }: Pick<ComparedPacks, 'added' | 'changed'>,
  newId: () => string,
): Draft {
  const next = new Map(changed.map(({ pack }) => [pack.id, pack]))
  const made = added.map(
    ({ pack: { setups, ...pack } }): DraftPack => ({
      ...pack,
      id: newId(),
      setups: setups.map(setup => ({ ...setup, id: newId() })),
    }),
  )
  return { ...draft, packs: [...draft.packs.map(pack => next.get(pack.id) ?? pack), ...made] }
}
