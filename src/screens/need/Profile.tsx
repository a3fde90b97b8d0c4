// The terrain of the track that the stops came from: handed to the load line while it still fits the trip, and said
// in words when it does not any more.

import { fitsTrack } from '../../components/graphics'
import type { Moment } from '../../reckon'
import { actions, openTrip } from '../../store'

/** The terrain to draw under the load; undefined where there is none that fits. */
export function useProfile(moments: readonly Moment[]) {
  const profile = openTrip.value?.profile
  return profile && fitsTrack(profile, moments.at(-1)?.km ?? 0) ? profile : undefined
}

/** Says why no terrain is drawn though a track was read. */
export function ProfileNote({ moments }: { moments: readonly Moment[] }) {
  const trackKm = openTrip.value?.profile?.at(-1)?.km ?? 0
  if (trackKm === 0 || useProfile(moments)) return null
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
