// What should be left on leaving a stop, in words.

import { itemName, type Plan } from '../plan'
import type { OnTheWay, Reckoning, Skipped } from '../reckon'
import { counted } from '../units'
import { changeText } from './changes'
import type { Formats } from './formats'
import { leastText, missingOf } from './missing'

/** A line of what should be left: what, and how much of it. */
export interface LeftLine {
  what: string
  amount: string
}

const rationsText = (rations: number) => counted(Number(rations.toFixed(1)), 'ration')

/** What should be left, line by line; nothing is said of what the trip does not have. */
export function leftLines(left: OnTheWay, plan: Plan, formats: Formats): LeftLine[] {
  const nameOf = (id: string) => itemName(plan.gear.find(item => item.id === id) ?? {})
  const wanted = formats.water(left.wantedLitres)
  const isShort = wanted !== formats.water(0)
  const missing = missingOf(plan)
  const load = (kg: number) => leastText(missing, 'mass', formats.kg(kg))
  return [
    ...(left.foodKg > 0
      ? [{ what: 'Food', amount: `${rationsText(left.rations)}, ${formats.kg(left.foodKg)}` }]
      : []),
    ...left.nightly.map(({ id, units }) => ({
      what: nameOf(id),
      amount: units > 0 ? `for ${counted(units, 'night')}` : 'none',
    })),
    {
      what: 'Water to leave with',
      amount: formats.water(left.waterLitres) + (isShort ? `, ${wanted} too little` : ''),
    },
    {
      what: 'Load',
      amount: load(left.loadKg) + (isShort ? `; ${load(left.loadFullWaterKg)} with all the water` : ''),
    },
    { what: 'Main body', amount: leastText(missing, 'litres', formats.litresUp(left.bodyLitres)) },
  ]
}

/** "3.4 rations, 2.4 kg more from here. The peak from here: +1.1 kg, +2.5 L.", of a resupply missed. */
export function skipText(skipped: Skipped, left: OnTheWay, formats: Formats): string {
  const { rations, foodKg, bodyLitres, peakLoadFullWaterKg } = skipped
  if (rations === null || foodKg === null || bodyLitres === null || peakLoadFullWaterKg === null)
    return 'No: this food gives too little energy for its weight.'
  const more = changeText(
    { litres: bodyLitres - left.most.bodyLitres, kg: peakLoadFullWaterKg - left.most.peakLoadFullWaterKg },
    formats,
  )
  const extraKg = formats.kg(foodKg - left.foodKg)
  const extra =
    extraKg === formats.kg(0) ? 'Nothing more' : `${rationsText(rations - left.rations)}, ${extraKg} more`
  return `${extra} from here. ${more ? `The peak from here: ${more}.` : 'The peak from here stays the same.'}`
}

/** The stops that are left with food for this section, the one asked about first, and where the food is bought anew. */
export interface UntilNext {
  /** The resupply, or the end. */
  to: number
  isEnd: boolean
  /** "8.6 kg: water 1.2 L, food 0.6 kg" */
  rows: { stop: number; says: string }[]
}

/** What is on the back at each departure until the next resupply or the end, the water as the containers have it. */
export function untilNext(
  left: OnTheWay,
  { plan, reckoning, formats }: { plan: Plan; reckoning: Reckoning; formats: Formats },
): UntilNext {
  const { to } = left.sections[0]!
  const missing = missingOf(plan)
  const rows = reckoning.moments
    .filter(({ stop, phase }) => phase === 'depart' && stop >= left.stop && stop < to)
    .map(({ stop, kg }) => ({
      stop,
      says: `${leastText(missing, 'mass', formats.kg(kg.total))}: water ${formats.water(kg.water)}, food ${formats.kg(kg.daily)}`,
    }))
  return { to, isEnd: to === plan.trip.stops.length - 1, rows }
}
