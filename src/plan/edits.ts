// What can be done to a draft's gear and packs. Pure: draft in, draft out; ids come from the caller.
// A thing that is gone changes nothing, so that an edit never fails.

import type { Draft, DraftItem, DraftPack, DraftSetup } from './draft'
import { copyName, insertAt, mapId, moveId, removeId } from './lists'

type NewId = () => string

/** Where a new thing goes and what it starts with. Without `at` it goes to the end of its list. */
export interface Start<T> {
  at?: number
  with?: Omit<T, 'id'>
}

export function addItem(draft: Draft, newId: NewId, start: Start<DraftItem> = {}): Draft {
  return { ...draft, gear: insertAt(draft.gear, { ...start.with, id: newId() }, start.at) }
}

export function duplicateItem(draft: Draft, id: string, newId: NewId): Draft {
  const index = draft.gear.findIndex(item => item.id === id)
  const item = draft.gear[index]
  if (!item) return draft
  return { ...draft, gear: insertAt(draft.gear, { ...item, ...copyName(item), id: newId() }, index + 1) }
}

/** Removes an item; what was inside a removed container rides on its own. */
export function removeItem(draft: Draft, id: string): Draft {
  const gear = removeId(draft.gear, id)
  if (gear === draft.gear) return draft
  return { ...draft, gear: gear.map(item => (item.inside === id ? freed(item) : item)) }
}

function freed(item: DraftItem): DraftItem {
  const { inside: _inside, ...rest } = item
  return rest
}

/** Leaves things at home, or takes them along. */
export function setAtHome(draft: Draft, ids: Iterable<string>, atHome: boolean): Draft {
  const chosen = new Set(ids)
  if (!draft.gear.some(item => chosen.has(item.id) && (item.atHome ?? false) !== atHome)) return draft
  const gear = draft.gear.map(item => {
    if (!chosen.has(item.id)) return item
    const { atHome: _atHome, ...rest } = item
    return atHome ? { ...rest, atHome } : rest
  })
  return { ...draft, gear }
}

/** The food that may ride in a container: what is eaten daily, rides in nothing yet and is not worn. */
export const foodFor = ({ gear }: Draft, containerId: string): DraftItem[] =>
  gear.filter(
    ({ id, use, inside, holdsLitres, stow }) =>
      id !== containerId &&
      use === 'daily' &&
      inside === undefined &&
      holdsLitres === undefined &&
      stow !== 'worn',
  )

/** Puts that food into the container. */
export function putFoodInto(draft: Draft, containerId: string): Draft {
  const food = new Set(foodFor(draft, containerId))
  const isContainer = draft.gear.some(
    ({ id, holdsLitres }) => id === containerId && holdsLitres !== undefined,
  )
  if (!isContainer || food.size === 0) return draft
  const gear = draft.gear.map(item => (food.has(item) ? { ...item, inside: containerId } : item))
  return { ...draft, gear }
}

export const moveItem = (draft: Draft, id: string, to: number): Draft =>
  withGear(draft, moveId(draft.gear, id, to))

const withGear = (draft: Draft, gear: DraftItem[]): Draft =>
  gear === draft.gear ? draft : { ...draft, gear }

const withPacks = (draft: Draft, packs: DraftPack[]): Draft =>
  packs === draft.packs ? draft : { ...draft, packs }

/** Adds a pack; it gets one set-up, with a frame until somebody says otherwise. */
export function addPack(draft: Draft, newId: NewId, start: Start<Omit<DraftPack, 'setups'>> = {}): Draft {
  const pack = { ...start.with, id: newId(), setups: [{ id: newId(), frame: 'framed' as const }] }
  return { ...draft, packs: insertAt(draft.packs, pack, start.at) }
}

export function duplicatePack(draft: Draft, id: string, newId: NewId): Draft {
  const index = draft.packs.findIndex(pack => pack.id === id)
  const pack = draft.packs[index]
  if (!pack) return draft
  const setups = pack.setups.map(setup => ({ ...setup, id: newId() }))
  const copy = { ...pack, ...copyName(pack), id: newId(), setups }
  return { ...draft, packs: insertAt(draft.packs, copy, index + 1) }
}

export const removePack = (draft: Draft, id: string): Draft => withPacks(draft, removeId(draft.packs, id))

export const movePack = (draft: Draft, id: string, to: number): Draft =>
  withPacks(draft, moveId(draft.packs, id, to))

export function addSetup(draft: Draft, packId: string, start: Start<DraftSetup> & { newId: NewId }): Draft {
  return inPack(draft, packId, setups => insertAt(setups, { ...start.with, id: start.newId() }, start.at))
}

export function duplicateSetup(draft: Draft, packId: string, copy: { id: string; newId: NewId }): Draft {
  return inPack(draft, packId, setups => {
    const index = setups.findIndex(setup => setup.id === copy.id)
    const setup = setups[index]
    return setup ? insertAt(setups, { ...setup, ...copyName(setup), id: copy.newId() }, index + 1) : setups
  })
}

export const removeSetup = (draft: Draft, packId: string, id: string): Draft =>
  inPack(draft, packId, setups => removeId(setups, id))

export const moveSetup = (draft: Draft, packId: string, move: { id: string; to: number }): Draft =>
  inPack(draft, packId, setups => moveId(setups, move.id, move.to))

function inPack(draft: Draft, packId: string, edit: (setups: DraftSetup[]) => DraftSetup[]): Draft {
  const change = (pack: DraftPack) => {
    const setups = edit(pack.setups)
    return setups === pack.setups ? pack : { ...pack, setups }
  }
  return withPacks(draft, mapId(draft.packs, packId, change))
}
