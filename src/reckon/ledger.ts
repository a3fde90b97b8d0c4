// The gear list, added up once by how amounts change (supplies) and by where things ride, so that the load and the
// litres of any moment are short sums, however long the list. Containers keep their own account.

import type { Item, Stow } from '../plan/types'
import { STREAMS, type Stock, type Stream } from './provisions'

/** A stream as it is (`left`), or the rubbish it leaves when it is used (`used`). */
export interface Supply {
  stream: Stream
  state: keyof Stock
}

/** Every supply, in the order in which accounts and amounts are listed. */
export const SUPPLIES: readonly Supply[] = STREAMS.flatMap(stream => [
  { stream, state: 'left' } as const,
  { stream, state: 'used' } as const,
])

/** Where the two supplies of a stream stand in `SUPPLIES`. */
const PLACES = Object.fromEntries(
  STREAMS.map((stream, i) => [stream, { left: 2 * i, used: 2 * i + 1 }]),
) as Record<Stream, Record<keyof Stock, number>>

/** Sums over the items of one supply, per unit of it; or over all of them at one stock. */
export interface Account {
  /** Everything that is part of the load. */
  kg: number
  bodyKg: number
  /** Of that, soft things not in a container. */
  softKg: number
  rigidLitres: number
  softLitres: number
  pocketLitres: number
}

/** What a container holds of one supply: an index of `SUPPLIES`, and litres per unit of it. */
interface Content {
  supply: number
  litres: number
}

interface Container {
  roomLitres: number
  /** Only of the supplies that are in it. */
  contents: Content[]
}

export interface Ledger {
  /** One for each of `SUPPLIES`. */
  accounts: Account[]
  containers: Map<string, Container>
}

const emptyAccount = (): Account => ({
  kg: 0,
  bodyKg: 0,
  softKg: 0,
  rigidLitres: 0,
  softLitres: 0,
  pocketLitres: 0,
})

export function ledgerOf(gear: Item[], stowOf: (item: Item) => Stow): Ledger {
  const accounts = SUPPLIES.map(emptyAccount)
  const containers = new Map<string, Container>()
  for (const { id, holdsLitres, count } of gear)
    if (holdsLitres !== null) containers.set(id, { roomLitres: holdsLitres * count, contents: [] })
  for (const item of gear) {
    const { left, used } = PLACES[streamOf(item)]
    enter(item, left, 1)
    if (item.leaves > 0) enter(item, used, item.leaves)
  }
  return { accounts, containers }

  function enter(item: Item, supply: number, share: number) {
    const account = accounts[supply]!
    const stow = stowOf(item)
    const kg = item.massKg * item.count * share
    const litres = item.litres * item.count * share
    if (stow !== 'worn') account.kg += kg
    if (stow === 'main-body') account.bodyKg += kg
    if (item.inside !== null) put(containers.get(item.inside)!.contents, { supply, litres })
    else if (stow === 'outside-pocket') account.pocketLitres += litres
    else if (stow === 'main-body' && item.build === 'rigid') account.rigidLitres += litres
    else if (stow === 'main-body') {
      account.softLitres += litres
      account.softKg += kg
    }
  }
}

function put(contents: Content[], { supply, litres }: Content) {
  const alike = contents.find(content => content.supply === supply)
  if (alike) alike.litres += litres
  else contents.push({ supply, litres })
}

/** Where each thing rides: a thing in a container is where the container is. */
export function stowsOf(gear: Item[]): (item: Item) => Stow {
  const stows = new Map<string, Stow>()
  for (const { id, holdsLitres, stow } of gear) if (holdsLitres !== null) stows.set(id, stow)
  return item => (item.inside === null ? item.stow : stows.get(item.inside)!)
}

function streamOf({ use, resupplied }: Item): Stream {
  if (use === 'daily') return resupplied ? 'dailyAgain' : 'dailyOnce'
  if (use === 'nightly') return resupplied ? 'nightlyAgain' : 'nightlyOnce'
  return use
}

/** Units of a thing in play: what is left of it and the rubbish it has left since the last bin. */
export function unitsInPlay(item: Item, stock: Stock): number {
  const stream = streamOf(item)
  return stock.left[stream] + item.leaves * stock.used[stream]
}

/** How many units of each of `SUPPLIES` a stock has. */
export function unitsOf(stock: Stock): number[] {
  return SUPPLIES.map(({ stream, state }) => stock[state][stream])
}

/** All accounts together at a stock of so many `units`, rubbish included. */
export function totalAt({ accounts }: Ledger, units: number[]): Account {
  const sum = emptyAccount()
  accounts.forEach((account, supply) => {
    const n = units[supply]!
    sum.kg += n * account.kg
    sum.bodyKg += n * account.bodyKg
    sum.softKg += n * account.softKg
    sum.rigidLitres += n * account.rigidLitres
    sum.softLitres += n * account.softLitres
    sum.pocketLitres += n * account.pocketLitres
  })
  return sum
}

/** Litres inside one container. */
export function insideLitres({ contents }: Container, units: number[]): number {
  let litres = 0
  for (const content of contents) litres += units[content.supply]! * content.litres
  return litres
}

/** What does not fit in its container rides in the main body as soft litres: how much of each of `SUPPLIES`. */
export function overflowOf({ containers }: Ledger, units: number[]): number[] {
  const litres = SUPPLIES.map(() => 0)
  for (const container of containers.values()) {
    const share = overflowShare(container, units)
    if (share === 0) continue
    for (const content of container.contents)
      litres[content.supply]! += share * units[content.supply]! * content.litres
  }
  return litres
}

/** Of each container, the share of its contents that does not fit. */
export function overflowShares({ containers }: Ledger, units: number[]): Map<string, number> {
  return new Map([...containers].map(([id, container]) => [id, overflowShare(container, units)]))
}

/** 0 where all of it fits. */
function overflowShare(container: Container, units: number[]): number {
  const inside = insideLitres(container, units)
  return inside > container.roomLitres ? (inside - container.roomLitres) / inside : 0
}
