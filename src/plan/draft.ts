// The draft: a plan while it is being typed. It has the shape of a plan document, but every value may be missing,
// and stops, packs and set-ups carry an id as items do, so that edits and field paths can name them.

import { type AppField, type OwnFacts, type Takes, withoutAppFields, withoutOwnFacts } from './app-fields'
import type {
  ItemDocument,
  PackDocument,
  PackingDocument,
  PersonDocument,
  PlanDocument,
  SetupDocument,
  StopDocument,
  WrittenPlan,
} from './fields'
import { PLAN_FORMAT, PLAN_VERSION } from './format'
import { withMainBody } from './main-body'
import { withItemIds } from './packed-ids'
import type { TripLog } from './trip-log'
import type { LitresRange } from './types'

type Trip = PlanDocument['trip']

export type DraftLeg = Partial<NonNullable<StopDocument['leg']>>
export type DraftStop = Partial<Omit<StopDocument, 'leg'>> & { id: string; leg?: DraftLeg }
export type DraftFuel = Partial<NonNullable<ItemDocument['fuel']>>
/** The thing on the shelf that an item was packed from, and when its facts were last taken: ms since 1970. */
export interface ShelfLink {
  id: string
  at: number
}
export type DraftItem = Partial<Omit<ItemDocument, 'fuel' | 'massKg' | 'litres'>> & {
  id: string
  massKg?: number
  litres?: number
  fuel?: DraftFuel
  shelf?: ShelfLink
  /** What its kind takes for each kg: while it is there, `litresRange` follows the mass. */
  litresPerKg?: LitresRange
  /** Things on the shelf that it may be instead. */
  swaps?: Swap[]
}
/** A thing on the shelf that may take the place of an item. */
export interface Swap {
  id: string
  /** Its facts in this trip where they were others than on the shelf, and when they were last taken from there, ms. */
  own?: { at: number; item: ItemFacts }
}
/** What is true of an item wherever it goes, and its usual place. */
export type ItemFacts = Omit<DraftItem, OfTheTrip>
/** What belongs to an item's place in its trip. */
export type OfTheTrip = 'id' | 'inside' | 'shelf' | 'atHome' | 'swaps' | 'owner' | 'carriedBy' | 'shareable'
export type DraftSetup = Partial<SetupDocument> & { id: string }
export type DraftPack = Partial<Omit<PackDocument, 'setups'>> &
  OwnFacts & { id: string; setups: DraftSetup[] }

/** One of several people. */
export type DraftPerson = Partial<Omit<PersonDocument, 'id' | 'pack'>> & {
  id: string
  /** The pack they take, out of all there are; the first person's is the trip's. */
  takes?: Takes
}

export interface Draft {
  name?: string
  /** The lone hiker. */
  carrier: Partial<PlanDocument['carrier']>
  /** Several people, who stand in for the lone hiker. */
  people?: DraftPerson[]
  split?: NonNullable<WrittenPlan['split']>
  /** Who carries what, by the ids of item and person, as it was shared out last. */
  shared?: Record<string, string>
  trip: Omit<Trip, 'stops'> & { stops: DraftStop[] }
  gear: DraftItem[]
  packs: DraftPack[]
  /** What was packed before; a thing on the shelf goes by its id there. */
  packings?: PackingDocument[]
  settings?: NonNullable<PlanDocument['settings']>
  /** What the hiker takes, out of all there are. */
  takes?: Takes
  /** What is noted of it on packing day, on the way and after. */
  log?: TripLog
}

/** Text that could not be read as the number its field asks for, by field path. */
export type Typed = Readonly<Record<string, string>>

/** A draft as a file holds it: without the ids of the app, and perhaps with gaps. */
export type DraftDocument = Omit<
  Draft,
  'carrier' | 'people' | 'trip' | 'gear' | 'packs' | 'takes' | 'log' | 'shared'
> & {
  format: typeof PLAN_FORMAT
  version: typeof PLAN_VERSION
  carrier?: Draft['carrier']
  people?: Omit<DraftPerson, 'takes'>[]
  trip: Omit<Trip, 'stops'> & { stops: Omit<DraftStop, 'id'>[] }
  gear: Omit<DraftItem, AppField>[]
  packs: (Omit<DraftPack, 'id' | 'setups' | keyof OwnFacts> & { setups: Omit<DraftSetup, 'id'>[] })[]
}

export const emptyDraft = (): Draft => ({ carrier: {}, trip: { stops: [] }, gear: [], packs: [] })

/** The draft as a plan file, without the ids and links only the app needs. It may have gaps: `settle` says which. */
export function toPlanDocument({
  takes: _takes,
  log: _log,
  shared: _shared,
  carrier,
  people = [],
  ...draft
}: Draft): DraftDocument {
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    ...draft,
    ...(people.length > 0 ? { people: people.map(({ takes: _taken, ...person }) => person) } : { carrier }),
    trip: { ...draft.trip, stops: draft.trip.stops.map(withoutId) },
    gear: draft.gear.map(withoutAppFields),
    packs: draft.packs.map(pack => ({
      ...withoutOwnFacts(withoutId(pack)),
      setups: pack.setups.map(withoutId),
    })),
    ...(draft.packings && { packings: withItemIds(draft.packings, draft.gear) }),
  }
}

/** A checked plan as a draft, with an id from `newId` for each stop, pack and set-up. */
export function fromPlanDocument(document: WrittenPlan, newId: () => string): Draft {
  const {
    format: _format,
    version: _version,
    gear = [],
    packs = [],
    carrier = {},
    people,
    ...rest
  } = document
  const withId = <T extends object>(thing: T) => ({ ...thing, id: newId() })
  const draft = {
    ...rest,
    carrier,
    trip: { ...document.trip, stops: document.trip.stops.map(withId) },
    gear: gear.map(asDraftItem),
    packs: packs.map(pack => ({ ...withId(withMainBody(pack)), setups: pack.setups.map(withId) })),
  }
  return people ? withPeople(draft, people) : draft
}

/** People with the packs they take, which a document names by their places. */
function withPeople(draft: Draft, people: PersonDocument[]): Draft {
  const all = people.map(({ pack: choice, ...person }): DraftPerson => {
    const pack = choice && draft.packs[choice.pack]
    const setup = pack?.setups[choice?.setup ?? 0]
    return pack && setup ? { ...person, takes: { pack: pack.id, setup: setup.id } } : person
  })
  const [{ takes, ...first }, ...others] = all as [DraftPerson, ...DraftPerson[]]
  return { ...draft, people: [first, ...others], ...(takes && { takes }) }
}

/** A form shows what is not known as an empty field. */
function asDraftItem({ massKg, litres, ...rest }: ItemDocument): DraftItem {
  return { ...rest, ...(massKg == null ? {} : { massKg }), ...(litres == null ? {} : { litres }) }
}

function withoutId<T extends { id: string }>(thing: T): Omit<T, 'id'> {
  const { id: _id, ...rest } = thing
  return rest
}
