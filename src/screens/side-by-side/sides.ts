// What a trip can be held against: another trip, a kit, or itself as it was.

import { useMemo } from 'preact/hooks'
import { momentText } from '../../components/pieces'
import { type Draft, type Typed, tripName } from '../../plan'
import { kitOnTrip, withList, withListTexts } from '../../plan/shelf'
import { apart, shelf, type TripDocument, tripList } from '../../store'
import { type PastState, pastOf } from '../../store/past'
import type { TripInSnapshot } from './use-snapshots'

export interface Side {
  value: string
  label: string
  group: string
  /** How it is called over its column, where its label is long. */
  name: string
  /** It comes before the trip it is held against: what has changed since is told. */
  isPast: boolean
  /** Made when it is looked at. */
  content: () => { draft: Draft; typed: Typed }
}

/** All that the trip can be held against, the first of them to begin with. */
export function useSides(
  trip: TripDocument | undefined,
  snapshots: readonly TripInSnapshot[] | null,
): Side[] {
  const [trips, kept, packs] = [tripList.value, shelf.value, apart.value]
  const past = useMemo(() => (trip ? pastOf(trip) : []), [trip])
  return useMemo(() => {
    if (!trip) return []
    const others = trips.filter(({ id }) => id !== trip.id)
    return [
      ...others.map(other => sideOf(`trip/${other.id}`, tripName(other.draft), 'Trips', () => other)),
      ...kept.bases.map(base =>
        sideOf(`kit/${base.id}`, base.name || 'Kit without a name', 'Kits', () => ({
          draft: kitOnTrip(trip.draft, kept, base),
          typed: withoutGear(trip.typed),
        })),
      ),
      ...past.map(state => pastSide(state, () => withPacks(state))),
      ...(snapshots ?? []).map(kept => snapshotSide(kept, () => withPacks(kept))),
    ]
    function withPacks({ draft, typed }: Pick<PastState, 'draft' | 'typed'>) {
      return { draft: withList(draft, packs.draft.packs), typed: withListTexts(typed, packs.typed) }
    }
  }, [trip, trips, kept, packs, past, snapshots])
}

const sideOf = (value: string, label: string, group: string, content: Side['content']): Side => ({
  value,
  label,
  group,
  name: label,
  isPast: false,
  content,
})

const pastSide = ({ step, label, at }: PastState, content: Side['content']): Side => ({
  ...sideOf(`past/${step}`, `before “${label}”, ${whenText(at)}`, 'Earlier states of this trip', content),
  name: 'Then',
  isPast: true,
})

const snapshotSide = ({ snapshot, at }: TripInSnapshot, content: Side['content']): Side => ({
  ...sideOf(
    `snapshot/${snapshot}`,
    `in the snapshot of ${momentText(at)}`,
    'Snapshots on this device',
    content,
  ),
  name: 'Then',
  isPast: true,
})

const withoutGear = (typed: Typed): Typed =>
  Object.fromEntries(Object.entries(typed).filter(([path]) => !path.startsWith('gear/')))

/** The time of day; of another day with its date. */
function whenText(at: number): string {
  const date = new Date(at)
  const isToday = date.toDateString() === new Date().toDateString()
  const time = { timeStyle: 'short' } as const
  return isToday
    ? date.toLocaleTimeString(undefined, time)
    : date.toLocaleString(undefined, { dateStyle: 'medium', ...time })
}
