// What would make a set-up do, one short sentence each; and what pack to look for where nothing would.

import { itemName, type Plan } from '../plan'
import {
  type ItemChoice,
  type Reckoning,
  type Remedy,
  type Replacement,
  type Shortfall,
  suffersOutside,
  type TripChange,
} from '../reckon'
import { capital, listText } from '../units'

import type { Formats } from './formats'
import { leastText, missingOf, toldChance } from './missing'

interface Context {
  plan: Plan
  formats: Formats
}

/** "Move Rain jacket to a pocket: then 41.2 L are needed, and about 9 chances in 10 that it fits." And what to mind. */
export function remedyInWords(remedy: Remedy, context: Context): string {
  const sentence = `${changeText(remedy, context)}: then ${afterText(remedy, context)}.`
  return [sentence, ...mindText(remedy, context)].join(' ')
}

function mindText(remedy: Remedy, { plan }: Context): string[] {
  const trip = remedy.kind === 'combined' ? remedy.trip : remedy
  const { move } = itemsOf(remedy)
  const toWrap = plan.gear.filter(item => move.includes(item.id) && suffersOutside(item)).map(itemName)
  return [
    ...(toWrap.length ? [`Wrap ${listText(toWrap)} well: rain and branches reach what is outside.`] : []),
    ...(trip.kind === 'trust-doubtful' ? [sourcesText(trip.stops.length > 1)] : []),
    ...(trip.kind === 'fewer-spare-rations' ? ['You then have less to eat if a day goes wrong.'] : []),
  ]
}

const sourcesText = (areSeveral: boolean) =>
  areSeveral
    ? 'Confirm them before you leave: they may be dry.'
    : 'Confirm it before you leave: it may be dry.'

/** The things a remedy is about. */
function itemsOf(remedy: Remedy): ItemChoice {
  if (remedy.kind === 'combined') return remedy.items
  return {
    move: 'move' in remedy ? remedy.move : [],
    leave: 'leave' in remedy ? remedy.leave : [],
  }
}

function changeText(remedy: Remedy, context: Context): string {
  switch (remedy.kind) {
    case 'other-setup':
      return `Use its set-up “${setupName(remedy.setup, context.plan)}”`
    case 'move-outside':
    case 'leave':
    case 'move-and-leave':
      return capital(itemsText(itemsOf(remedy), context.plan))
    case 'swap':
      return capital(swapsText(remedy.swaps, context.plan))
    case 'combined':
      return capital(`${itemsText(remedy.items, context.plan)}, and ${tripText(remedy.trip, context)}`)
    default:
      return capital(tripText(remedy, context))
  }
}

function itemsText({ move, leave }: ItemChoice, { gear }: Plan): string {
  const itemsBy = (ids: string[]) => ids.flatMap(id => gear.find(it => it.id === id) ?? [])
  const named = (ids: string[]) => listText(itemsBy(ids).map(itemName))
  const moved = move.length ? [`move ${named(move)} to ${move.length > 1 ? 'pockets' : 'a pocket'}`] : []
  const asks = itemsBy(leave).every(item => item.optional)
    ? ''
    : `, if you can do without ${leave.length > 1 ? 'them' : 'it'}`
  const left = leave.length ? [`leave ${named(leave)} at home${asks}`] : []
  return listText([...moved, ...left])
}

/** What the lighter or smaller thing is for, warmth above all, no figure here knows. */
function swapsText(swaps: readonly Replacement[], { gear }: Plan): string {
  const nameOf = (id: string) => gear.filter(it => it.id === id).map(itemName)
  const taken = swaps.map(it => `${itemName(it.with)} instead of ${listText(nameOf(it.item))}`)
  return `take ${listText(taken)}, if ${swaps.length > 1 ? 'they are' : 'it is'} enough for this trip`
}

function tripText(change: TripChange, { plan, formats }: Context): string {
  const { stops, meals } = plan.trip
  const name = (stop: number) => stops[stop]!.name
  switch (change.kind) {
    case 'fewer-spare-rations':
      return `carry ${change.spareDays === 0 ? 'no spare rations' : `at most ${numberText(change.spareDays)} days of spare rations`} instead of ${numberText(meals.spareDays)}`
    case 'trust-doubtful':
      return `count on ${listText(change.stops.map(name))}, marked doubtful`
    case 'camp-at-water':
      return `spend the ${change.nights > 1 ? `${change.nights} nights` : 'night'} at ${name(change.to)}, a water source, instead of ${name(change.from)} (the longest day is then ${formats.hours(change.longestDayHours)})`
    case 'resupply':
      return `resupply at ${name(change.stop)} as well${change.shop ? '' : ', if there is a shop'}`
  }
}

/** The litres where room was wanting, the load where that was too much; what else was wrong then holds too. */
function afterText({ kind, after }: Remedy, { plan, formats }: Context): string {
  const { mends, bodyLitres, carriedKg, fitChance, collarChance } = after
  const missing = missingOf(plan)
  const chance = toldChance(collarChance ?? fitChance, { missing })
  const collar = collarChance === null ? '' : ' with the collar raised'
  const fits = chance === null ? `it holds what is counted${collar}` : `${chance} that it fits${collar}`
  const room = `${leastText(missing, 'litres', formats.litres(bodyLitres))} are needed, and ${fits}`
  const load = `${leastText(missing, 'mass', formats.kg(carriedKg))} are carried`
  if (kind === 'other-setup') {
    if (mends.includes('load')) return `${load}, which it can carry, and ${fits}`
    return chance === null ? fits : `it is suitable, and ${fits}`
  }
  if (mends.includes('room') && mends.includes('load')) return `${load}, ${room}`
  if (mends.includes('room')) return room
  if (mends.includes('load')) return `${load}, which it can carry`
  return 'everything goes in'
}

/** What is wanting, and what pack would do: for a set-up that nothing mends. */
export function shortfallInWords(
  { wanted }: Shortfall,
  { plan, reckoning, formats }: Context & { reckoning: Reckoning },
): string {
  const { litresUp, litres, cm } = formats
  const missing = missingOf(plan)
  const noLitres = missing.litres.length > 0
  const kg = (amount: number) => leastText(missing, 'mass', formats.kg(amount))
  const asks = [
    noLitres
      ? `at least ${litresUp(reckoning.need.bodyLitres)} of main body`
      : `${litresUp(wanted.bodyLitresSafe)} of main body`,
    `a rating of ${kg(wanted.contentsKg)} for the contents (${kg(wanted.ratedKg)} with a pack of this mass)`,
    ...(wanted.frame ? ['a frame'] : []),
    ...(wanted.outsideLitres > 0
      ? [`pockets of ${leastText(missing, 'litres', litres(wanted.outsideLitres))}`]
      : []),
    ...(wanted.innerHeightCm === null ? [] : [`${cm(wanted.innerHeightCm)} of height inside`]),
    ...(wanted.innerWidthCm === null ? [] : [`${cm(wanted.innerWidthCm)} of width`]),
  ]
  const look = `No small change makes this pack work${noLitres ? '' : ' nine times in ten'}. Look for ${listText(asks)}.`
  return missing.mass.length > 0 && !wanted.frame
    ? `${look} Without all masses it can’t be told whether it takes a frame.`
    : look
}

function setupName(index: number, { packs }: Plan): string {
  const setups = packs.flatMap(pack => pack.setups)
  return setups[index]?.name ?? ''
}

const numberText = (days: number) => String(Number(days.toFixed(2)))
