// The trip and the places reached from it.

import { library } from '../../store'
import { AfterTripScreen } from '../after-trip'
import { OnTheWayScreen } from '../on-the-way'
import { PackingDayScreen } from '../packing-day'
import type { Detail } from '../rows'
import { TripScreen } from './TripScreen'

export function TripPlace(props: Detail) {
  const { screen } = library.value.place
  if (screen === 'packing-day') return <PackingDayScreen />
  if (screen === 'after-trip') return <AfterTripScreen />
  if (screen === 'on-the-way') return <OnTheWayScreen detail={props.detail} />
  return <TripScreen {...props} />
}
