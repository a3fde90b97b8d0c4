// The terrain of the track that the stops came from: handed to the load line while it still fits the trip, and said
// in words when it does not any more.

import type { Moment } from '../../reckon'
import { actions, openTrip } from '../../store'

/** Stops whose way differs by more than this from the track's are not those of the track. */
const MOST_DIFFERENCE = 0.02

type Fit = 'none' | 'fits' | 'changed'

/** Whether the trip still goes along its track, by length alone. */
function fitOf(profile: readonly { km: number }[] | undefined, moments: readonly Moment[]): Fit {
  const trackKm = profile?.at(-1)?.km ?? 0
  if (!(trackKm > 0)) return 'none'
  const tripKm = moments.at(-1)?.km ?? 0
  return Math.abs(tripKm - trackKm) <= MOST_DIFFERENCE * trackKm ? 'fits' : 'changed'
}

/** The terrain to draw under the load; undefined where there is none that fits. */
export function useProfile(moments: readonly Moment[]) {
  const profile = openTrip.value?.profile
  return fitOf(profile, moments) === 'fits' ? profile : undefined
}

/** Says why no terrain is drawn though a track was read. */
export function ProfileNote({ moments }: { moments: readonly Moment[] }) {
  if (fitOf(openTrip.value?.profile, moments) !== 'changed') return null
  return (
    <div>
      <p class="hint">
        No elevation profile: the stops have changed since the track was read. Undo, or read the track again
        under Trip.
      </p>
      <button type="button" class="link" onClick={() => actions.setProfile(null)}>
        Remove this elevation profile
      </button>
    </div>
  )
}
