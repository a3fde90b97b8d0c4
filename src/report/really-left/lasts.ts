// How far what is really left lasts: food and fuel until they are bought again, water until the next source.

import type { LeftAt, Plan } from '../../plan'
import { drunkFrom, type OnTheWay, type Reckoning, type UsedBy, usedFrom } from '../../reckon'
import type { Caution } from '../caution'
import type { Formats } from '../formats'

interface Context {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export interface Lasting {
  what: string
  says: string
  isShort: boolean
}

/** Rounding is no shortage. */
const NOTHING = 1e-9

/** What is said of each amount that was typed. `left` must be what `onTheWay` gave for the stop. */
export function lasting(at: LeftAt, left: OnTheWay, context: Context): Lasting[] {
  const { plan, reckoning, formats } = context
  const { stop: from } = left
  const { to } = left.sections[0]!
  const { foodKg, fuelKg, waterLitres } = at
  const stretch = (use: 'daily' | 'nightly') => usedFrom(plan, reckoning, { use, from, to })
  return [
    ...(foodKg === undefined ? [] : [foodLasts(foodKg, stretch('daily'), context)]),
    ...(fuelKg === undefined
      ? []
      : [lasts('Fuel', { has: fuelKg, used: stretch('nightly') }, plan, formats.gear)]),
    ...(waterLitres === undefined
      ? []
      : [waterLasts(waterLitres, drunkFrom(plan, reckoning, from), context)]),
  ]
}

const needOf = (used: readonly UsedBy[]) => used.at(-1)?.amount ?? 0

function lasts(
  what: string,
  { has, used, kept = 0 }: { has: number; used: readonly UsedBy[]; kept?: number },
  plan: Plan,
  show: (amount: number) => string,
): Lasting {
  const end = used.at(-1)
  const short = needOf(used) + kept - has
  const place = ({ stop, phase }: UsedBy) =>
    `you ${phase === 'arrive' ? 'reach' : 'leave'} ${plan.trip.stops[stop]!.name}`
  if (!end || needOf(used) + kept === 0)
    return { what, isShort: false, says: `None is needed${end ? ` until ${place(end)}` : ''}.` }
  if (short <= NOTHING) {
    const until = `Enough until ${place(end)}`
    const spare = show(Math.max(0, -short))
    return { what, isShort: false, says: spare === show(0) ? `${until}.` : `${until}; ${spare} to spare.` }
  }
  const reached = used.findLast(({ amount }) => amount <= has + NOTHING)
  const far = reached ? `Enough until ${place(reached)}` : `Not enough until ${place(used[0]!)}`
  return { what, isShort: true, says: `${far}; short by ${show(short)} until ${place(end)}.` }
}

function foodLasts(has: number, used: readonly UsedBy[], { plan, formats }: Context): Lasting {
  const said = lasts('Food', { has, used }, plan, formats.kg)
  const need = needOf(used)
  if (!said.isShort || has === 0) return said
  return {
    ...said,
    says: `${said.says} It lasts at ${formats.percent(Math.floor(100 * (has / need)) / 100)} of a full ration.`,
  }
}

function waterLasts(has: number, used: readonly UsedBy[], { plan, formats }: Context): Lasting {
  const { reserveLitres: kept } = plan.trip.water
  const said = lasts('Water', { has, used, kept }, plan, formats.water)
  const end = used.at(-1)
  if (!end) return said
  const { name, water } = plan.trip.stops[end.stop]!
  const says =
    said.isShort && has + NOTHING >= needOf(used)
      ? `Enough until you reach ${name}, but ${formats.water(needOf(used) + kept - has)} of the reserve is missing.`
      : said.says
  const isTrusted = water === 'doubtful' && end.stop < plan.trip.stops.length - 1
  const doubt = isTrusted ? ` ${name} is doubtful: if it is dry, you have no water.` : ''
  return { ...said, says: says + doubt }
}

/** What to beware of where something is short. */
export function shortOf(all: readonly Lasting[], plan: Plan): Caution[] {
  const isShort = (what: string) => all.some(one => one.what === what && one.isShort)
  const melts = plan.gear.some(({ fuel, count }) => count > 0 && (fuel?.meltLitres ?? 0) > 0)
  return [
    ...(isShort('Water')
      ? [
          {
            signal: 'WARNING',
            about: 'water',
            text: 'Running dry can end in heat illness or collapse: fill up before you go on, or turn back. Treat all water found outdoors before you drink.',
          } as const,
        ]
      : []),
    ...(isShort('Fuel') && melts
      ? [
          {
            signal: 'WARNING',
            about: 'water',
            text: 'Without fuel there is no water from snow: turn back, or get fuel early.',
          } as const,
        ]
      : []),
    ...(isShort('Food')
      ? [
          {
            signal: 'CAUTION',
            about: 'food',
            text: 'Too little food costs strength, warmth and judgement: buy food early, or turn back.',
          } as const,
        ]
      : []),
  ]
}
