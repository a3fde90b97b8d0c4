// The gear list, added up once by how amounts change (streams) and by where things ride, so that the load and the
// litres of any moment are short sums, however long the list. Containers keep their own account.

import type { Item, Stow } from '../plan/types'
import { STREAMS, type Stock, type Stream } from './provisions'

/** Sums over the items of one stream, per unit of it. */
interface Account {
  /** Everything that is part of the load. */
  kg: number
  bodyKg: number
  /** Of that, soft things not in a container. */
  softKg: number
  rigidLitres: number
  softLitres: number
  pocketLitres: number
}

/** A thing as it is, and the rubbish it leaves when it is used. */
const STATES = ['left', 'used'] as const
type State = (typeof STATES)[number]
type Book<T> = Record<Stream, Record<State, T>>

interface Container {
  roomLitres: number
  contents: Book<number>
}

export interface Ledger {
  accounts: Book<Account>
  containers: Map<string, Container>
}

function book<T>(make: () => T): Book<T> {
  return Object.fromEntries(STREAMS.map(s => [s, { left: make(), used: make() }])) as Book<T>
}

export function ledgerOf(gear: Item[], stowOf: (item: Item) => Stow): Ledger {
  const accounts = book<Account>(() => ({
    kg: 0,
    bodyKg: 0,
    softKg: 0,
    rigidLitres: 0,
    softLitres: 0,
    pocketLitres: 0,
  }))
  const containers = new Map<string, Container>()
  for (const { id, holdsLitres, count } of gear)
    if (holdsLitres !== null) containers.set(id, { roomLitres: holdsLitres * count, contents: book(() => 0) })
  for (const item of gear) {
    enter(item, 'left', 1)
    enter(item, 'used', item.leaves)
  }
  return { accounts, containers }

  function enter(item: Item, state: State, share: number) {
    const stream = streamOf(item)
    const account = accounts[stream][state]
    const stow = stowOf(item)
    const kg = item.massKg * item.count * share
    const litres = item.litres * item.count * share
    if (stow !== 'worn') account.kg += kg
    if (stow === 'main-body') account.bodyKg += kg
    if (item.inside !== null) containers.get(item.inside)!.contents[stream][state] += litres
    else if (stow === 'outside-pocket') account.pocketLitres += litres
    else if (stow === 'main-body' && item.build === 'rigid') account.rigidLitres += litres
    else if (stow === 'main-body') {
      account.softLitres += litres
      account.softKg += kg
    }
  }
}

/** Where each thing rides: a thing in a container is where the container is. */
export function stowsOf(gear: Item[]): (item: Item) => Stow {
  const byId = new Map(gear.map(item => [item.id, item]))
  return item => (item.inside === null ? item.stow : byId.get(item.inside)!.stow)
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

/** A figure of the accounts at a given stock, for one stream and state. */
export function amount(
  { accounts }: Ledger,
  stock: Stock,
  { stream, state, figure }: { stream: Stream; state: State; figure: keyof Account },
): number {
  return stock[state][stream] * accounts[stream][state][figure]
}

/** A figure of the accounts at a given stock, over all streams, rubbish included. */
export function total(ledger: Ledger, stock: Stock, figure: keyof Account): number {
  let sum = 0
  for (const stream of STREAMS)
    for (const state of STATES) sum += amount(ledger, stock, { stream, state, figure })
  return sum
}

/** Litres inside one container at a given stock. */
export function insideLitres(contents: Container['contents'], stock: Stock): number {
  let litres = 0
  for (const stream of STREAMS)
    for (const state of STATES) litres += stock[state][stream] * contents[stream][state]
  return litres
}

/**
 * What does not fit in its container rides in the main body as soft litres: how much of each stream and state,
 * and which share of each container's contents.
 */
export function overflowOf({ containers }: Ledger, stock: Stock) {
  const litres = book(() => 0)
  const shares = new Map<string, number>()
  let overflowLitres = 0
  for (const [id, { roomLitres, contents }] of containers) {
    const inside = insideLitres(contents, stock)
    if (inside <= roomLitres) continue
    const share = (inside - roomLitres) / inside
    shares.set(id, share)
    overflowLitres += inside - roomLitres
    for (const stream of STREAMS)
      for (const state of STATES)
        litres[stream][state] += share * stock[state][stream] * contents[stream][state]
  }
  return { overflowLitres, litres, shares }
}
