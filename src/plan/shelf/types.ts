// The shelf: everything one owns, the lists one packs from again and again, one's own packings, and the packs one has or
// knows. It lies beside the trips; a trip takes things from it as items of its own, and is judged by all the packs.

import type { DraftPack, ItemFacts, Typed } from '../draft'
import type { BodyFrom, PackedThing, Stow } from '../types'

/** A thing's facts: what is true of it wherever it goes, and its usual place. */
export type ThingFacts = ItemFacts

export interface Thing {
  id: string
  item: ThingFacts
  note?: string
  /** YYYY-MM-DD. */
  weighedOn?: string
  retired?: boolean
  /** When each fact was last changed, ms since 1970: what is offered to trips that took it before. */
  changed: Partial<Record<keyof ThingFacts, number>>
}

export interface BaseLine {
  /** The id of a thing. */
  thing: string
  count?: number
  stow?: Stow
  /** The id of the thing that it rides in. */
  inside?: string
  /** On the list, and usually left at home. */
  atHome?: boolean
}

/** A list one packs from again and again ("three-season base"). */
export interface Base {
  id: string
  name: string
  lines: BaseLine[]
}

/** How full a pack was, or what stood for it. */
export type Said =
  | { how: 'full'; fullness: number }
  | { how: 'over'; overLitres: number }
  | { how: 'box'; lengthCm: number; widthCm: number; heightCm: number }

/** One packing of one's own: what calibrates the packing model. */
export interface Packing {
  id: string
  /** Milliseconds since 1970. */
  at: number
  /** The name of the list or trip. */
  gear: string
  /** The name of the pack, or "a box". */
  pack: string
  bodyLitres: number
  said: Said
  reckonedLitresAtFactor1: number
  factor: number
  /** What was along, and how sure it was; packings kept before this was recorded have none, and tell no trip anything. */
  list?: PackingList
}

export interface PackingList {
  packFrom: BodyFrom
  /** Spread of the packing model, as a share of the litres reckoned. */
  d: number
  /** Those with a thing on the shelf behind them under its id, the others under the id of the trip's item. */
  things: PackedThing[]
}

/** What the hiker goes by among packs; what is left out says nothing. */
export interface OwnFigures {
  /** At or under this a figure is good, by the name of the figure. */
  under?: { [figure in string]?: number }
  /** A figure of their own: its name, and the power to which each of its parts is in it. */
  measure?: { name: string; powers: { [part in string]?: number } }
}

/** The lists of the shelf, each of things with ids. */
export const SHELF_LISTS = ['things', 'bases', 'packings', 'packs'] as const

export const SHELF_FORMAT = 'pack-reckoner/shelf'
export const SHELF_VERSION = 3

/** What an edit of the shelf changes. */
export interface ShelfContents {
  things: Thing[]
  bases: Base[]
  packings: Packing[]
  packs: DraftPack[]
  figures?: OwnFigures
  /** Unread text by path: `<thingId>/massKg`, `packs/<packId>/bodyLitres`. */
  typed: Typed
}

export interface Shelf extends ShelfContents {
  format: typeof SHELF_FORMAT
  version: typeof SHELF_VERSION
  /** Milliseconds since 1970; no two states of the shelf share it. */
  changedAt: number
  /** Counts the saves of the shelf, in whichever tab. */
  revision: number
}

/** What the shelf's edits need from outside, so that they stay pure. `now`: ms since 1970. */
export interface Outside {
  newId: () => string
  now: number
}

export const emptyShelf = (): Shelf => ({
  format: SHELF_FORMAT,
  version: SHELF_VERSION,
  changedAt: 0,
  revision: 0,
  things: [],
  bases: [],
  packings: [],
  packs: [],
  typed: {},
})
