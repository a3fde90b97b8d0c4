// Why a pack does or does not do for each of several trips, and why these packs are the fewest.

import { coverOf, type JudgedTrip, reckon } from '../../reckon'
import { formatQuantity } from '../../units'
import { ANSWERS } from '../answers'
import type { Formats } from '../formats'
import { whyLoad } from './setup-load'
import { whyRoom } from './setup-room'
import { setupContext } from './setup-words'
import { told } from './sum'
import type { Explanation, NamedPlan } from './types'

const judgedTrips = (trips: readonly NamedPlan[]): JudgedTrip[] =>
  trips.flatMap(({ name, plan }) => {
    const result = reckon(plan)
    return result.ok ? [{ name, plan, reckoning: result.reckoning }] : []
  })

/** The room and the load of one set-up for each trip; every plan has the same packs. */
export function whyTrips(trips: readonly NamedPlan[], setup: number, formats: Formats): Explanation[] {
  return judgedTrips(trips).flatMap(({ name, plan, reckoning }) => {
    const context = setupContext({ plan, reckoning, formats, stopIds: [] }, setup)
    const answer = ANSWERS[context.judged.answer].words.toLowerCase()
    return [...whyRoom(context), ...whyLoad(context)].map((explanation, i) => ({
      ...explanation,
      title: i === 0 ? `${name}: ${answer}. ${explanation.title}` : `${name}: ${explanation.title}`,
    }))
  })
}

export function whyCover(trips: readonly NamedPlan[], formats: Formats): Explanation[] {
  const judged = judgedTrips(trips)
  const cover = coverOf(judged)
  if (!cover.ok) return []
  return [
    told({
      title: 'The fewest packs',
      says: 'Every set of the packs was looked at: the fewest that are suitable for all trips for which any is; among equals the lower price, then the lower mass. A pack without a price counts as dearer than any other.',
      inputs: cover.packs.map(({ name, massKg, price, trips: does }) => ({
        label: `${name}, for ${does.map(({ trip }) => judged[trip]!.name).join(', ')}`,
        value: `${formats.gear(massKg)}, ${price === null ? 'price not known' : formatQuantity('money', price, { system: 'metric' })}`,
      })),
      result: {
        value: cover.packs.length,
        text: `${cover.packs.length} for ${judged.length - cover.uncovered.length} of ${judged.length} trips`,
      },
    }),
  ]
}
