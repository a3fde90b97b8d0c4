// The trip and the place reached from it.

import { library } from '../../store'
import { OnTheWayScreen } from '../on-the-way'
import type { Detail } from '../rows'
import { TripScreen } from './TripScreen'

export function TripPlace(props: Detail) {
  return library.value.place.screen === 'on-the-way' ? (
    <OnTheWayScreen detail={props.detail} />
  ) : (
    <TripScreen {...props} />
  )
}
