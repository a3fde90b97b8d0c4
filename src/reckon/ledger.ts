// The gear list, added up once by how amounts change (supplies) and by where things ride, so that the load and the
// litres of any moment are short sums, however long the list. Containers keep their own account.

import type { Item, Stow } from '../plan/types'
import { type Alike, alikeContainers, type Container, type Content } from './containers'
import { STREAMS, type Stock, type Stream, SUPPLIES, type Supply } from './provisions'

/** Where the two supplies of a stream stand in `SUPPLIES`. */
const PLACES = Object.fromEntries(
  STREAMS.map((stream, i) => [stream, { left: 2 * i, used: 2 * i + 1 }]),
) as Record<Stream, Record<Supply['state'], number>>

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

export interface Ledger {
  /** One for each of `SUPPLIES`, and then as many for each other owner. */
  accounts: Account[]
  containers: Map<string, Container>
  /** The same, as they fill along the way. */
  filling: Alike[]
}

const emptyAccount = (): Account => ({
  kg: 0,
  bodyKg: 0,
  softKg: 0,
  rigidLitres: 0,
  softLitres: 0,
  pocketLitres: 0,
})

/** `others`: owners of food in the gear whose rations are not the carrier's. */
export function ledgerOf(gear: Item[], stowOf: (item: Item) => Stow, others: readonly string[] = []): Ledger {
  const accounts = [null, ...others].flatMap(() => SUPPLIES.map(emptyAccount))
  const containers = new Map<string, Container>()
  for (const { id, holdsLitres, count } of gear)
    if (holdsLitres !== null) containers.set(id, { roomLitres: holdsLitres * count, contents: [] })
  for (const item of gear) {
    const { left, used } = PLACES[streamOf(item)]
    const from = (others.indexOf(item.owner ?? '') + 1) * SUPPLIES.length
    enter(item, from + left, 1)
    if (item.leaves > 0) enter(item, from + used, item.leaves)
  }
  return { accounts, containers, filling: alikeContainers(containers.values()) }

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

/** How a thing's amount changes along the trip. */
export function streamOf({ use, resupplied }: Item): Stream {
  if (use === 'daily') return resupplied ? 'dailyAgain' : 'dailyOnce'
  if (use === 'nightly') return resupplied ? 'nightlyAgain' : 'nightlyOnce'
  return use
}

/** Units of a thing in play: what is left of it and the rubbish it has left since the last bin. */
export function unitsInPlay(item: Item, stock: Stock): number {
  const stream = streamOf(item)
  const { left, used } = (item.owner !== null && stock.of?.get(item.owner)) || stock
  return left[stream] + item.leaves * used[stream]
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
