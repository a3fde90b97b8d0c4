// What is used up from the departure of a stop on, moment by moment: food and fuel until they are bought again or the trip
// ends, water until the next source. So it can be told how far what is really left lasts.

import type { Item, Plan } from '../plan/types'
import { streamOf } from './ledger'
import type { Stock, Stream } from './provisions'
import { partsOf } from './remedies-parts'
import { departureOf } from './route'
import type { Phase, Reckoning } from './types'
import { isSource } from './water'

/** What has been used by then, since the departure that was asked about; kg, or litres of water. */
export interface UsedBy {
  stop: number
  phase: Phase
  amount: number
}

/** The moments after a departure, up to the departure of stop `to`, or to the arrival where the trip ends there. */
const momentsTo = ({ moments }: Reckoning, from: number, to: number) =>
  moments.slice(departureOf(from) + 1, departureOf(to) + 1)

/**
 * Food (`daily`) or fuel (`nightly`) used from leaving `from` until stop `to`, the next resupply or the end. `reckoning`
 * must be what `reckon(plan)` gave.
 */
export function usedFrom(
  plan: Plan,
  reckoning: Reckoning,
  { use, from, to }: { use: 'daily' | 'nightly'; from: number; to: number },
): UsedBy[] {
  const { gear, stowOf, stocks, spareRations } = partsOf(plan, reckoning)
  const again: Stream = `${use}Again`
  const massOf = (isWanted: (item: Item) => boolean) =>
    gear.reduce(
      (sum, item) => (stowOf(item) !== 'worn' && isWanted(item) ? sum + item.massKg * item.count : sum),
      0,
    )
  const againKg = massOf(item => streamOf(item) === again)
  const onceKg = massOf(item => streamOf(item) === `${use}Once`)
  const start = stocks[departureOf(from)]!.left
  // At the departure of the resupply all is eaten but what is spare; the stock there is that which was bought.
  const bare = use === 'daily' ? spareRations : 0
  const leftAgain = ({ left }: Stock, isBought: boolean) => (isBought ? bare : left[again])
  return momentsTo(reckoning, from, to).map(({ stop, phase }) => {
    const stock = stocks[departureOf(stop) - (phase === 'arrive' ? 1 : 0)]!
    const isBought = stop === to && phase === 'depart'
    const amount =
      againKg * (start[again] - leftAgain(stock, isBought)) +
      onceKg * (start[`${use}Once`] - stock.left[`${use}Once`])
    return { stop, phase, amount: Math.max(0, amount) }
  })
}

/** Water used from leaving `from` until the next source, or the end. */
export function drunkFrom(plan: Plan, reckoning: Reckoning, from: number): UsedBy[] {
  const { stops, water } = plan.trip
  const next = stops.findIndex((_, stop) => stop > from && isSource(plan, stop))
  const to = next < 0 ? stops.length - 1 : next
  let amount = 0
  return reckoning.moments.slice(departureOf(from) + 1, departureOf(to)).map(({ stop, phase }) => {
    amount +=
      phase === 'arrive' ? reckoning.legs[stop - 1]!.waterLitres : stops[stop]!.nights * water.campLitres
    return { stop, phase, amount }
  })
}
