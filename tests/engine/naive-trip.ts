// The trip as a list of things that happen, one after the other, read off the model page (sections 3 and 4): walk,
// eat, sleep, throw away, shop, fill up. What is left or used of a thing is found by walking along that list.

import type { Item, Plan } from '../../src/plan'

export type Happening =
  | { what: 'look'; stop: number; phase: 'arrive' | 'depart' }
  | { what: 'walk'; leg: number; hours: number }
  | { what: 'eat'; rations: number }
  | { what: 'night'; nights: number }
  | { what: 'throw-away' }
  | { what: 'shop' }

/** Which day each leg is walked on (from 0), and how many days there are. */
export function daysOf({ trip: { stops } }: Plan): { dayOfLeg: number[]; days: number } {
  let day = 0
  const dayOfLeg: number[] = []
  for (const stop of stops) {
    if (stop.leg) dayOfLeg.push(day)
    day += stop.nights
  }
  return { dayOfLeg, days: day + 1 }
}

export function happenings(plan: Plan, hours: number[], rations: number[]): Happening[] {
  const { stops, meals } = plan.trip
  const { dayOfLeg } = daysOf(plan)
  const list: Happening[] = [{ what: 'look', stop: 0, phase: 'depart' }]
  for (let stop = 1; stop < stops.length; stop++) {
    const leg = stop - 1
    const day = dayOfLeg[leg]!
    const sameDay = hours.filter((_, other) => dayOfLeg[other] === day)
    const dayHours = sameDay.reduce((a, b) => a + b, 0)
    const share = dayHours === 0 ? 1 / sameDay.length : hours[leg]! / dayHours
    list.push({ what: 'walk', leg, hours: hours[leg]! })
    list.push({ what: 'eat', rations: meals.trail * share * rations[day]! })
    list.push({ what: 'look', stop, phase: 'arrive' })
    if (stop === stops.length - 1) break
    const { nights, meals: served, resupply } = stops[stop]!
    if (nights > 0 && served === 'carried') {
      list.push({ what: 'eat', rations: meals.supper * rations[day]! })
      for (let rest = 1; rest < nights; rest++) list.push({ what: 'eat', rations: rations[day + rest]! })
      list.push({ what: 'eat', rations: meals.breakfast * rations[day + nights]! })
      list.push({ what: 'night', nights })
    }
    if (resupply || served === 'provided') list.push({ what: 'throw-away' })
    if (resupply) list.push({ what: 'shop' })
    list.push({ what: 'look', stop, phase: 'depart' })
  }
  return list
}

const amountOf = (item: Item, it: Happening, allHours: number): number => {
  if (item.use === 'daily') return it.what === 'eat' ? it.rations : 0
  if (item.use === 'nightly') return it.what === 'night' ? it.nights : 0
  if (item.use === 'spread') return it.what === 'walk' && allHours > 0 ? it.hours / allHours : 0
  return 0
}

/** Units of a thing still aboard at the happening `now`, a look; a unit is a ration, a night, or the whole. */
export function leftOf(item: Item, now: number, list: Happening[], plan: Plan, rations: number[]): number {
  if (item.use === 'kept') return 1
  const allHours = list.reduce((sum, it) => (it.what === 'walk' ? sum + it.hours : sum), 0)
  if (item.use === 'spread') {
    let left = 1
    for (let i = 0; i < now; i++) left -= amountOf(item, list[i]!, allHours)
    return left
  }
  let left = 0
  let i = now + 1
  while (i < list.length && !(item.resupplied && list[i]!.what === 'shop')) {
    left += amountOf(item, list[i]!, allHours)
    i++
  }
  if (item.use === 'nightly') return left
  const { meals } = plan.trip
  if (i >= list.length && !meals.supperAfterEnd) left += meals.supper * rations.at(-1)!
  return left + (meals.spareDays * rations.reduce((a, b) => a + b, 0)) / rations.length
}

/** Units of it used since rubbish was last thrown away. */
export function usedOf(item: Item, now: number, list: Happening[]): number {
  const allHours = list.reduce((sum, it) => (it.what === 'walk' ? sum + it.hours : sum), 0)
  let used = 0
  for (let i = 0; i < now; i++) {
    used += amountOf(item, list[i]!, allHours)
    if (list[i]!.what === 'throw-away') used = 0
  }
  return used
}

/** Water by where it rides. */
export interface Jugs {
  outside: number
  soft: number
  rigid: number
}

export const ridesOf = (item: Item, gear: Item[]): Item['stow'] =>
  item.inside === null ? item.stow : gear.find(other => other.id === item.inside)!.stow

/** What the water containers take; null when there is none. */
export function jugRoom(gear: Item[]): Jugs | null {
  const room: Jugs = { outside: 0, soft: 0, rigid: 0 }
  for (const item of gear) {
    const litres = item.count * item.holdsWaterLitres
    if (ridesOf(item, gear) !== 'main-body') room.outside += litres
    else room[item.build] += litres
  }
  return room.outside + room.soft + room.rigid === 0 ? null : room
}

export function fillJugs(litres: number, room: Jugs | null): Jugs {
  if (!room) return { outside: 0, soft: litres, rigid: 0 }
  const outside = Math.min(litres, room.outside)
  const soft = Math.min(litres - outside, room.soft)
  return { outside, soft, rigid: Math.min(litres - outside - soft, room.rigid) }
}

function drink(jugs: Jugs, litres: number): Jugs {
  let thirst = litres
  const from = (jug: number) => {
    const taken = Math.min(jug, thirst)
    thirst -= taken
    return jug - taken
  }
  const soft = from(jugs.soft)
  const rigid = from(jugs.rigid)
  return { soft, rigid, outside: from(jugs.outside) }
}

const isSource = ({ trip }: Plan, stop: number) => {
  if (stop === 0) return true
  const { water } = trip.stops[stop]!
  return water === 'sure' || (water === 'doubtful' && trip.water.trustDoubtful)
}

/** The water at every look, and what each source is left with and short of. */
export function waterAlong(plan: Plan, list: Happening[], legLitres: number[], gear: Item[]) {
  const { stops, water } = plan.trip
  const room = jugRoom(gear)
  const capacity = room ? room.outside + room.soft + room.rigid : Number.POSITIVE_INFINITY
  const sources: { stop: number; carried: number; short: number }[] = []
  const looks: Jugs[] = []
  let jugs: Jugs = { outside: 0, soft: 0, rigid: 0 }
  for (const it of list) {
    if (it.what === 'walk') jugs = drink(jugs, legLitres[it.leg]!)
    if (it.what !== 'look') continue
    if (it.phase === 'depart' && isSource(plan, it.stop)) {
      let need = water.reserveLitres + legLitres[it.stop]!
      for (let next = it.stop + 1; next < stops.length - 1 && !isSource(plan, next); next++)
        need += stops[next]!.nights * water.campLitres + legLitres[next]!
      const carried = Math.min(need, capacity)
      sources.push({ stop: it.stop, carried, short: need - carried })
      jugs = fillJugs(carried, room)
    } else if (it.phase === 'depart') jugs = drink(jugs, stops[it.stop]!.nights * water.campLitres)
    looks.push(jugs)
  }
  return { sources, looks, room }
}
