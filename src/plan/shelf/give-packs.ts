// Trips of older versions, files and links bring packs of their own: they give them to the list of packs. Pure.

import { type Takes, withoutOwnFacts } from '../app-fields'
import type { Draft, DraftPack, DraftSetup } from '../draft'
import { fieldPath, pathParts } from '../field-path'
import { copyName, groupedBy } from '../lists'
import { tripName } from '../names'
import { type Giver, givesPacks, idsOf, type PackList, packIn, textsAt } from './own-packs'
import { same } from './same'

/**
 * The list with the packs that trips bring, and those trips without them. What is on the list already is not put there
 * again; what has the name of another is told apart by that of its trip. Ids follow from what is given, so that two tabs
 * which do this at once make the same list.
 */
export function givenToList<S extends PackList, T extends Giver>(
  shelf: S,
  trips: Iterable<T>,
): { shelf: S; trips: T[] } {
  const giving = [...trips].filter(givesPacks)
  if (giving.length === 0) return { shelf, trips: [] }
  const packs = [...shelf.packs]
  const typed: Record<string, string> = { ...shelf.typed }
  const byName = groupedBy(packs, nameKey)
  const ids = idsOf(packs)
  const named = (pack: DraftPack) => byName.get(nameKey(pack)) ?? []
  const alike = (pack: DraftPack) => named(pack).find(other => isAlike(other, pack))

  const taken = (pack: DraftPack, trip: T): DraftPack => {
    const told = named(pack).length > 0 ? { ...pack, ...copyName(pack, tripName(trip.draft)) } : pack
    const there = alike(pack) ?? alike(told)
    if (there) return there
    let { id } = told
    while (ids.has(id)) id += `-${trip.id}`
    const made = { ...told, id }
    ids.add(id)
    packs.push(made)
    byName.set(nameKey(made), [...named(made), made])
    return made
  }

  const given = giving.map(trip => {
    const at = new Map(trip.draft.packs.map(pack => [pack.id, { from: pack, to: taken(pack, trip) }]))
    for (const [path, text] of Object.entries(trip.typed)) {
      const [, id = '', ...field] = pathParts(path)
      const moved = packIn(path) === null ? undefined : at.get(id)
      if (moved) typed[pathOf(moved, field)] ??= text
    }
    const given = <P extends { takes?: Takes }>(taker: P): P => {
      const moved = taker.takes && at.get(taker.takes.pack)
      if (!moved) return taker
      return { ...taker, takes: { pack: moved.to.id, setup: setupIn(moved, taker.takes!.setup) } }
    }
    const { people } = trip.draft
    const draft: Draft = {
      ...given(trip.draft),
      packs: [],
      ...(people && { people: people.map(given) }),
    }
    return { ...trip, draft, typed: textsAt(trip.typed, pack => pack === null) }
  })
  return { shelf: { ...shelf, packs, typed }, trips: given }
}

const nameKey = ({ name = '' }: DraftPack) => name.trim().toLowerCase()

/** Whether two packs hold the same, whatever the app calls them and the hiker says of them. */
function isAlike(a: DraftPack, b: DraftPack): boolean {
  const facts = (pack: DraftPack) => ({
    ...withoutOwnFacts(pack),
    id: '',
    setups: pack.setups.map(setup => ({ ...setup, id: '' })),
  })
  return same(facts(a), facts(b))
}

interface Moved {
  from: DraftPack
  to: DraftPack
}

/** The id of the set-up that stands at the same place. */
const setupIn = ({ from, to }: Moved, id: string): string =>
  (to.setups[from.setups.findIndex((setup: DraftSetup) => setup.id === id)] ?? to.setups[0])?.id ?? id

function pathOf(moved: Moved, [part = '', setup = '', ...rest]: string[]): string {
  const inside = part === 'setups' ? [part, setupIn(moved, setup), ...rest] : [part, setup, ...rest]
  return fieldPath('packs', moved.to.id, ...inside.filter(Boolean))
}
