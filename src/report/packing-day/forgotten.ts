// "Forgot something?": what past trips of the hiker had, and this list has not. Trips of about as many nights count first;
// what came home unused, and food, which differs each time, are passed over. Pure.

import { addItem, type Draft, type DraftItem, isMarked } from '../../plan'
import { type Outside, packThings, type Shelf } from '../../plan/shelf'

interface Past {
  demo: boolean
  draft: Draft
}

export interface Forgotten {
  name: string
  item: DraftItem
  /** In so many of the trips that were looked at. */
  trips: number
}

const MOST = 8

/** Trips are alike with this share of nights more or less, and always with one. */
const ALIKE = 0.5

const nightsOf = ({ trip }: Draft) => trip.stops.reduce((sum, { nights = 0 }) => sum + nights, 0)

export function forgotten(draft: Draft, past: readonly Past[]): { things: Forgotten[]; of: number } {
  const own = past.filter(({ demo, draft: other }) => !demo && other.gear.length > 0)
  const nights = nightsOf(draft)
  const most = Math.max(1, ALIKE * nights)
  const alike = own.filter(({ draft: other }) => Math.abs(nightsOf(other) - nights) <= most)
  const looked = alike.length > 0 ? alike : own
  const here = new Set(draft.gear.flatMap(item => [...keysOf(item), ...swapped(item)]))
  const found = new Map<string, Forgotten>()
  for (const { draft: other } of looked) {
    const counted = new Set<string>()
    for (const item of other.gear) {
      const [key] = keysOf(item)
      if (!key || counted.has(key) || keysOf(item).some(one => here.has(one))) continue
      if (item.atHome || item.use === 'daily' || isMarked(other.log?.unused, item.id)) continue
      counted.add(key)
      const known = found.get(key)
      found.set(key, { name: item.name!.trim(), item, trips: (known?.trips ?? 0) + 1 })
    }
  }
  const things = [...found.values()].sort((a, b) => b.trips - a.trips).slice(0, MOST)
  return { things, of: looked.length }
}

/** What it may be swapped for: seen by the hiker, and not forgotten. */
const swapped = ({ swaps = [] }: DraftItem) => swaps.map(({ id }) => shelfKey(id))

const shelfKey = (id: string) => `shelf ${id}`

/** What a thing is known by in another list: its name, and its thing on the shelf; nothing while it has no name. */
function keysOf({ name, shelf }: DraftItem): string[] {
  const said = name?.trim().toLowerCase()
  return said ? [said, ...(shelf ? [shelfKey(shelf.id)] : [])] : []
}

/** The draft with that thing: from the shelf where it is there, else as the past trip had it. */
export function withForgotten(
  draft: Draft,
  { item }: Pick<Forgotten, 'item'>,
  { shelf, ...outside }: Outside & { shelf: Pick<Shelf, 'things'> },
): Draft {
  const thing = shelf.things.find(({ id, retired }) => id === item.shelf?.id && !retired)
  if (thing) return packThings(draft, [thing], outside)
  const { id: _id, inside: _inside, shelf: _shelf, ...facts } = item
  return addItem(draft, outside.newId, { with: facts })
}
