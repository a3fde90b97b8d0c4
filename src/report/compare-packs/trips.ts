// All trips against one shelf: each trip judged with the packs of all of them, the fewest packs that do for all, and
// what a single pack for all would have to be.

import {
  type Draft,
  groupedBy,
  isParty,
  type Pack,
  type Plan,
  type Settled,
  settleAny,
  type Typed,
} from '../../plan'
import { type Cover, coverOf, type JudgedTrip, planOfOne, reckon, takenAlong } from '../../reckon'
import { ANSWERS } from '../answers'
import type { Formats } from '../formats'
import { takesNothing } from '../missing'
import { nameIn } from '../party'
import { setupInWords } from '../verdicts'
import { type Asked, askedBy } from './requirement'

export interface TripAsked {
  name: string
  draft: Draft
  typed: Typed
}

export interface AllTrips {
  /** The trips that could be judged, in their order. */
  names: string[]
  plans: Plan[]
  /** A row for each set-up of each pack: in each trip its answer and the sentence that decides it, made when asked for. */
  rows: {
    pack: string
    setup: string
    named: boolean
    readonly cells: { mark: string; answer: string; why: string }[]
  }[]
  cover: Cover
  /** What one pack for all trips would have to offer, if it weighs so much; null without trips. */
  asked: (packKg?: number) => Asked | null
  /** What could not be judged, or was taken from one of several trips, a sentence each. */
  notes: string[]
}

/**
 * Settles and reckons every trip with all their packs, matched by name: not for every keystroke. Trip by trip: whoever
 * drives it may let others go first in between.
 */
export function* allTripsSteps(trips: TripAsked[], formats: Formats): Generator<undefined, AllTrips> {
  const settled: (Omit<Settled, 'plan'> & { plan: Plan; trip: TripAsked })[] = []
  const ofSeveral: string[] = []
  for (const trip of trips) {
    yield
    const { plan, ...rest } = settleAny(trip.draft, trip.typed)
    if (isParty(plan))
      ofSeveral.push(`${trip.name} is of several people: it is judged by what ${nameIn(plan, 0)} carries.`)
    settled.push({ trip, ...rest, plan: takenAlong(planOfOne(plan, rest.shared)) })
  }
  const { packs, differing } = shelfOf(settled.map(({ trip, plan }) => ({ name: trip.name, plan })))
  const notes = [...differing, ...ofSeveral]
  const judged: JudgedTrip[] = []
  for (const { trip, plan: own } of settled) {
    if (takesNothing(own)) {
      notes.push(`${trip.name} is not judged: it has no gear yet.`)
      continue
    }
    yield
    const plan = { ...own, packs }
    const reckoned = reckon(plan)
    if (reckoned.ok) judged.push({ name: trip.name, plan, reckoning: reckoned.reckoning })
    else notes.push(`${trip.name} is not judged: its food has too little energy for its mass.`)
  }
  yield
  const told = groupedBy(
    settled.flatMap(({ trip, leftOut }) =>
      leftOut.flatMap(({ path, message }) => (path.startsWith('packs/') ? [{ trip, message }] : [])),
    ),
    ({ message }) => message,
  )
  for (const [message, those] of told)
    notes.push(`${those.map(({ trip }) => trip.name).join(', ')}: ${message}`)
  return {
    names: judged.map(({ name }) => name),
    plans: judged.map(({ plan }) => plan),
    rows: rowsOf(packs, judged, formats),
    cover: coverOf(judged),
    asked: packKg => askedBy(judged, packKg),
    notes,
  }
}

/** The packs of all trips, one a name: the figures are those of the first trip that has it. */
function shelfOf(trips: { name: string; plan: Plan }[]): { packs: Pack[]; differing: string[] } {
  const shelf = new Map<string, { pack: Pack; from: string; text: string }>()
  const differing = new Set<string>()
  for (const { name, plan } of trips)
    for (const pack of plan.packs) {
      const text = JSON.stringify(pack)
      const known = shelf.get(pack.name)
      if (!known) shelf.set(pack.name, { pack, from: name, text })
      else if (known.text !== text)
        differing.add(
          `${pack.name} has other figures in ${name}: those of ${known.from} are used for all trips.`,
        )
    }
  return { packs: [...shelf.values()].map(({ pack }) => pack), differing: [...differing] }
}

function rowsOf(packs: Pack[], judged: JudgedTrip[], formats: Formats): AllTrips['rows'] {
  return packs
    .flatMap(pack => pack.setups.map(setup => ({ pack, setup })))
    .map(({ pack, setup }, i) => ({
      pack: pack.name,
      setup: setup.name,
      named: pack.setups.length > 1,
      get cells() {
        return judged.map(({ plan, reckoning }) => {
          const { answer, verdicts } = setupInWords(reckoning.packs[i]!, { plan, reckoning, formats })
          const { mark, words } = ANSWERS[answer]
          return { mark, answer: words, why: verdicts[0].lead + verdicts[0].rest }
        })
      },
    }))
}
