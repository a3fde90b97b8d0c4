// The elevation profile of the trip over its stops, while they still go along the track they came from.

import { useMemo } from 'preact/hooks'
import { useFormats } from '../../components/fields'
import { fitsTrack, TerrainPicture } from '../../components/graphics'
import { openTrip } from '../../store'

export function TripProfile() {
  const formats = useFormats()
  const trip = openTrip.value
  const stops = trip?.draft.trip.stops
  const placed = useMemo(() => {
    let km = 0
    return (stops ?? []).map(({ name = '', water = 'none', nights = 0, resupply = false, leg }) => {
      km += leg?.km ?? 0
      return { name, water, nights, resupply, km }
    })
  }, [stops])
  if (!trip?.profile || !fitsTrack(trip.profile, placed.at(-1)?.km ?? 0)) return null
  return <TerrainPicture stops={placed} profile={trip.profile} format={formats} />
}
