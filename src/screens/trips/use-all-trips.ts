// Many trips judged together: at once where that is quick, and trip by trip where the page would stand still for it.

import { useEffect, useMemo, useState } from 'preact/hooks'
import { beginInPortions, inOneGo } from '../../files/portions'
import type { Formats } from '../../report'
import { type AllTrips, allTripsSteps, type TripAsked } from '../../report/compare-packs'

/** So many stops, nights and items in all are reckoned at once. */
const AT_ONCE = 3000

const sizeOf = ({ draft: { trip, gear } }: TripAsked) =>
  trip.stops.reduce((sum, { nights }) => sum + 1 + (nights ?? 0), gear.length)

/** What `allTripsSteps` gives, or null until it is known. `trips`: null, none are asked for; else the same while unchanged. */
export function useAllTrips(trips: TripAsked[] | null, formats: Formats): AllTrips | null {
  const isMuch = useMemo(
    () => trips !== null && trips.reduce((sum, trip) => sum + sizeOf(trip), 0) > AT_ONCE,
    [trips],
  )
  const atOnce = useMemo(
    () => (trips && !isMuch ? inOneGo(allTripsSteps(trips, formats)) : null),
    [trips, isMuch, formats],
  )
  const [later, setLater] = useState<{ of: TripAsked[]; result: AllTrips } | null>(null)
  useEffect(() => {
    if (!trips || !isMuch) return
    return beginInPortions(allTripsSteps(trips, formats), result => setLater({ of: trips, result }))
  }, [trips, isMuch, formats])
  return atOnce ?? (later?.of === trips ? later.result : null)
}
