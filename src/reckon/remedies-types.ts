// The changes to gear or trip that could make a set-up do, and what comes of each. Plain data, safe to clone.

import type { Item } from '../plan/types'

/** Things by their ids: into an outside pocket, or left at home. */
export interface ItemChoice {
  move: string[]
  leave: string[]
}

/** Another thing that the hiker may take in an item's place. */
export interface Replacement {
  /** The item it stands in for. */
  item: string
  thing: string
  /** As the item would be then, under its id. */
  with: Item
}

/** Stops are named by their index in the trip. */
export type TripChange =
  /** `spareDays`: the most spare rations, in steps of 0.1, that may be carried; `lessDays` less than planned. */
  | { kind: 'fewer-spare-rations'; spareDays: number; lessDays: number }
  /** Rests on sources that nobody vouched for: never to be shown without saying so. */
  | { kind: 'trust-doubtful'; stops: number[]; caution: 'confirm-sources' }
  /** All nights of the dry stop `from` are spent at the source `to`, the stop before or after it. */
  | { kind: 'camp-at-water'; from: number; to: number; nights: number; longestDayHours: number }
  /** `shop`: the hiker says that there is one; else never to be shown without saying that there must be. */
  | { kind: 'resupply'; stop: number; shop: boolean }

export type Change =
  /** Index into `Reckoning.packs`. */
  | { kind: 'other-setup'; setup: number }
  /** `proven`: no smaller choice of this kind does; false where the search or the model leaves that open. */
  | { kind: 'move-outside'; move: string[]; proven: boolean }
  | { kind: 'leave'; leave: string[]; proven: boolean }
  | ({ kind: 'move-and-leave'; proven: boolean } & ItemChoice)
  /** Other things in the places of these items, one each. */
  | { kind: 'swap'; swaps: Replacement[] }
  | TripChange
  | { kind: 'combined'; items: ItemChoice; trip: TripChange }

/** What a set-up fails at, in the groups in which it can be mended. */
export type Failing = 'room' | 'load' | 'size'

/** The set-up once the change is made, reckoned in full. */
export interface After {
  bodyLitres: number
  /** With all the water the trip wants. */
  peakLoadKg: number
  carriedKg: number
  fitChance: number
  /** Chance that it fits with the collar raised, where only that makes it do; else null. */
  collarChance: number | null
  /** What the set-up failed at before. */
  mends: Failing[]
}

export type Remedy = Change & { after: After }
