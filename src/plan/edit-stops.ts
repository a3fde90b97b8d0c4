// What can be done to a draft's stops. Pure; keeps the trip whole: the first stop has no leg, every other has one,
// and the last takes no nights and no resupply.

import type { Draft, DraftLeg, DraftStop } from './draft'
import type { Start } from './edits'
import { copyName, insertAt, moveId } from './lists'

type NewId = () => string

/** Adds a stop, at the end without `at`. */
export function addStop(draft: Draft, newId: NewId, start: Start<DraftStop> = {}): Draft {
  return withStops(draft, insertAt(draft.trip.stops, { ...start.with, id: newId() }, start.at))
}

/** Puts a copy of a stop after it, with the same leg once more. */
export function duplicateStop(draft: Draft, id: string, newId: NewId): Draft {
  const { stops } = draft.trip
  const index = stops.findIndex(stop => stop.id === id)
  const stop = stops[index]
  if (!stop) return draft
  return withStops(draft, insertAt(stops, { ...stop, ...copyName(stop), id: newId() }, index + 1))
}

/** Removes a stop. The way stays as long: a removed middle stop's leg goes into the next one. */
export function removeStop(draft: Draft, id: string): Draft {
  const { stops } = draft.trip
  const index = stops.findIndex(stop => stop.id === id)
  const stop = stops[index]
  if (!stop) return draft
  const next = stops[index + 1]
  const rest = stops.toSpliced(index, 1)
  if (!next || !stop.leg) return withStops(draft, rest)
  return withStops(draft, rest.with(index, { ...next, leg: merged(stop.leg, next.leg ?? {}) }))
}

/**
 * Moves a stop to index `to`. Its leg goes with it; where another stop becomes the first, its leg goes to the one
 * that was first, so that the way stays as long.
 */
export function moveStop(draft: Draft, id: string, to: number): Draft {
  const { stops } = draft.trip
  const moved = moveId(stops, id, to)
  if (moved === stops) return draft
  const formerFirst = stops[0]?.id
  const spare = moved[0]?.id === formerFirst ? undefined : moved[0]?.leg
  const give = (stop: DraftStop) => (spare && stop.id === formerFirst ? { ...stop, leg: spare } : stop)
  return withStops(draft, moved.map(give))
}

/** What a leg may say of its own weather. */
export const LEG_WEATHER = ['airC', 'humidity', 'sun'] as const

/** The draft with the trip's weather on these legs, each told by the stop it leads to. */
export function withTripWeather(
  draft: Draft,
  ids: readonly string[],
  fields: readonly (typeof LEG_WEATHER)[number][] = LEG_WEATHER,
): Draft {
  const stops = draft.trip.stops.map(stop => {
    if (!stop.leg || !ids.includes(stop.id)) return stop
    const leg = { ...stop.leg }
    for (const field of fields) delete leg[field]
    return { ...stop, leg }
  })
  return { ...draft, trip: { ...draft.trip, stops } }
}

/** The draft with one temperature, °C, for the whole trip. */
export function withOneAir(draft: Draft, airC: number): Draft {
  const ids = draft.trip.stops.map(({ id }) => id)
  const { trip, ...rest } = withTripWeather(draft, ids, ['airC'])
  return { ...rest, trip: { ...trip, weather: { ...trip.weather, airC } } }
}

/** The draft with these stops, ends put right. */
export function withStops(draft: Draft, stops: DraftStop[]): Draft {
  return { ...draft, trip: { ...draft.trip, stops: stops.map((stop, i) => fitting(stop, i, stops.length)) } }
}

function fitting(stop: DraftStop, index: number, count: number): DraftStop {
  const { leg = {}, ...place } = stop
  if (index === count - 1 || index === 0) delete place.nights
  if (index === count - 1) delete place.resupply
  return index === 0 ? place : { ...place, leg }
}

/** Two legs walked as one: the second's weather and ground, and its hours only if both had their own. */
function merged(first: DraftLeg, second: DraftLeg): DraftLeg {
  const leg: DraftLeg = { ...second }
  for (const field of ['km', 'ascentM', 'descentM'] as const) {
    const sum = addUp(first[field], second[field])
    if (sum !== undefined) leg[field] = sum
  }
  if (first.hours === undefined || second.hours === undefined) delete leg.hours
  else leg.hours = first.hours + second.hours
  return leg
}

const addUp = (a: number | undefined, b: number | undefined) =>
  a === undefined ? b : b === undefined ? a : a + b
