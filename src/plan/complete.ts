// Fills a checked document's gaps with the defaults: what the engine reads.

import * as defaults from './defaults'
import type {
  ItemDocument,
  PackDocument,
  PackingDocument,
  PartyDocument,
  PersonDocument,
  PlanDocument,
  StopDocument,
  WrittenPlan,
} from './fields'
import { withMainBody } from './main-body'
import type { Carrier, Item, LitresRange, Pack, PartyPlan, PastPacking, Person, Plan, Stop } from './types'

/** Items and packs that are complete already. */
export type Known = Partial<Pick<Plan, 'gear' | 'packs'>>

/**
 * The plan with every default in place. The document must have passed {@link parsePlan}; `known` holds its items and
 * packs where they are complete already.
 */
export function completePlan(document: PlanDocument, known?: Known): Plan {
  return { ...completeRest(document, known), carrier: completeCarrier(document.carrier) }
}

/** As {@link completePlan}, for a plan of several people. */
export function completeParty(document: PartyDocument, known?: Known): PartyPlan {
  return {
    ...completeRest(document, known),
    people: document.people.map(completePerson),
    split: { ...defaults.SPLIT, ...document.split },
  }
}

function completeCarrier(carrier: PlanDocument['carrier']): Carrier {
  const loadShareLimit = defaults.loadShareLimitFor(carrier.ageYears ?? null)
  return { ...defaults.CARRIER, loadShareLimit, ...carrier }
}

function completePerson({ pack, ...person }: PersonDocument): Person {
  return {
    ...defaults.PERSON,
    ...completeCarrier(person),
    ...person,
    pack: pack ? { ...defaults.PACK_CHOICE, ...pack } : null,
  }
}

function completeRest(
  document: Omit<WrittenPlan, 'carrier' | 'people' | 'split'>,
  known: Known = {},
): Omit<Plan, 'carrier'> {
  const { trip, settings } = document
  return {
    name: document.name ?? '',
    trip: {
      stops: trip.stops.map(completeStop),
      pace: { ...defaults.PACE, ...trip.pace },
      water: { ...defaults.WATER, ...trip.water },
      meals: { ...defaults.MEALS, ...trip.meals },
      weather: { ...defaults.WEATHER, ...trip.weather },
      wet: trip.wet ?? defaults.WET,
    },
    gear: known.gear ?? (document.gear ?? []).map(completeItem),
    packs: known.packs ?? (document.packs ?? []).map(completePack),
    packings: (document.packings ?? []).map(completePacking),
    settings: { ...defaults.SETTINGS, ...settings },
  }
}

function completeStop(stop: StopDocument, index: number): Stop {
  const leg = stop.leg ? { ...defaults.LEG, ...stop.leg } : null
  const water = index === 0 ? 'sure' : (stop.water ?? defaults.STOP.water)
  return { ...defaults.STOP, ...stop, water, leg }
}

/** Larger than nearly all things that are carried, each: judgement. */
const UNKNOWN_UP_TO = { massKg: 2, litres: 10 } as const

/** What nobody has said of an item, by the most it may be. Fuel is weighed by what it must boil. */
function unknownUpTo({ massKg, litres, litresFrom, fuel }: ItemDocument): Item['unknownUpTo'] {
  const noMass = massKg === null && !fuel
  const noLitres = litres === null && litresFrom !== 'kind'
  if (!noMass && !noLitres) return null
  return { massKg: noMass ? UNKNOWN_UP_TO.massKg : null, litres: noLitres ? UNKNOWN_UP_TO.litres : null }
}

/** The shape of all items: the engine walks thousands of them, and as many shapes as kinds of items cost it dearly. */
const BLANK = {
  id: '',
  massKg: 0,
  litres: 0,
  leaves: 0,
  resupplied: false,
  ...defaults.ITEM,
  unknownUpTo: null,
}

/** An item with every default in place. */
export function completeItem(item: ItemDocument): Item {
  const { use = BLANK.use, holdsLitres, litresRange, fuel } = item
  const leaves = defaults.leavesFor(use)
  const complete = { ...BLANK, leaves, resupplied: defaults.resuppliedFor(use) }
  return Object.assign(complete, item, {
    massKg: item.massKg ?? 0,
    litres: item.litresFrom === 'kind' && litresRange ? meanOf(litresRange) : (item.litres ?? 0),
    // A container's walls do not give way, whatever the document says of its build.
    build: holdsLitres === undefined ? (item.build ?? BLANK.build) : 'rigid',
    fuel: fuel ? { ...defaults.FUEL, ...fuel } : null,
    unknownUpTo: unknownUpTo(item),
  } as const)
}

/** Mean of a triangular distribution: means add up to the mean of the whole, the typical values do not. */
const meanOf = ({ low, typical, high }: LitresRange): number => (low + typical + high) / 3

/** A pack with every default in place. */
export function completePack(pack: PackDocument): Pack {
  return {
    ...defaults.PACK,
    ...withMainBody(pack),
    setups: pack.setups.map(setup => ({ ...defaults.SETUP, ...setup })),
  }
}

function completePacking({ overLitres = 0, ...packing }: PackingDocument): PastPacking {
  const { p = fullnessNotClosing(packing.packLitres, overLitres) } = packing
  return {
    ...packing,
    p,
    pack: packing.pack ?? null,
    packFrom: packing.packFrom ?? defaults.PACK.bodyFrom,
    things: packing.things.map(thing => ({
      ...thing,
      litresFrom: thing.litresFrom ?? defaults.ITEM.litresFrom,
    })),
  }
}

/** How full a pack of `packLitres` is that would not close by `overLitres`: 1 or more. */
export const fullnessNotClosing = (packLitres: number, overLitres: number): number =>
  (packLitres + overLitres) / packLitres
