// Two to four packs side by side: their bodies to one scale, their figures, and what they are for each trip.

import { useMemo } from 'preact/hooks'
import { SelectOne, useFormats } from '../../components/fields'
import { toTop } from '../../components/frame'
import { usePortions } from '../../components/long-list'
import { type DraftPack, tripName } from '../../plan'
import { FIT_LINE } from '../../report'
import { packsApart, packsBeside } from '../../report/compare-packs'
import { openTrip, person, type TripDocument, tripList } from '../../store'
import { BesideTable } from './BesideTable'
import { besideTrips, chosenSetups, keyOf, MOST_BESIDE, setBeside, tickTrip } from './chosen'
import './packs-beside.css'

export function PacksBesideScreen() {
  const trip = openTrip.value
  const packs = trip?.draft.packs ?? []
  const formats = useFormats()
  const all = useMemo(() => setupsOf(packs), [packs])
  const keys = shownOf(all)
  const chosen = useMemo(
    () => packsApart(keys.flatMap(key => all.find(each => each.key === key) ?? [])),
    [all, keys.join()],
  )
  const found = useMemo(
    () =>
      trip && chosen.length > 1 ? packsBeside(chosen, { ...trip, person: person.value }, formats) : null,
    [trip, person.value, chosen, formats],
  )
  const free = all.filter(({ key }) => !keys.includes(key))
  return (
    <div class="screen packs-beside">
      <div class="heading">
        <h2>Packs side by side</h2>
        <button type="button" class="quiet" onClick={() => toTop('packs')}>
          Back to packs
        </button>
      </div>
      {all.length < 2 ? (
        <p>Two packs are needed: add another.</p>
      ) : (
        <>
          {keys.length < MOST_BESIDE && free.length > 0 ? (
            <SelectOne
              label={keys.length < 2 ? 'Choose two to four packs' : 'One more'}
              options={[{ value: '', label: 'Choose a pack' }, ...free.map(asOption)]}
              chosen=""
              onChoose={key => {
                // What stood there unasked stays.
                chosenSetups.value = keys
                if (key) setBeside(key)
              }}
            />
          ) : null}
          {found && trip ? <BesideTable {...{ chosen, found, trip, formats }} /> : null}
          <Trips open={trip} />
          <p class="hint">{FIT_LINE}</p>
        </>
      )}
    </div>
  )
}

interface SetupOf {
  key: string
  pack: DraftPack
  setup: string
  /** Of the pack in the list. */
  index: number
}

const setupsOf = (packs: readonly DraftPack[]): SetupOf[] =>
  packs.flatMap((pack, index) =>
    pack.setups.map(({ id }) => ({ key: keyOf(pack.id, id), pack, setup: id, index })),
  )

const asOption = ({ key, ...setup }: SetupOf) => ({
  value: key,
  label: packsApart([setup])[0]!.name!,
})

/** Those chosen; where none were, two to begin with: starred ones first. */
function shownOf(all: readonly SetupOf[]): readonly string[] {
  const there = new Set(all.map(({ key }) => key))
  const chosen = chosenSetups.value.filter(key => there.has(key))
  if (chosenSetups.value.length > 0) return chosen
  const usual = all.filter(({ pack }) => pack.aside === undefined)
  const starred = usual.filter(({ pack }) => pack.starred)
  return [...new Set([...starred, ...usual])].slice(0, 2).map(({ key }) => key)
}

/** For which trips the packs are judged. */
function Trips({ open }: { open: TripDocument | null }) {
  const all = tripList.value
  const { drawn, more } = usePortions(all.length, 'trips')
  if (all.length < 2) return null
  return (
    <details class="more">
      <summary>For which trips</summary>
      <fieldset>
        <legend class="unseen">Trips to judge them for</legend>
        {all.slice(0, drawn).map(({ id, draft, demo }) => (
          <label key={id} class="toggle">
            <input
              type="checkbox"
              checked={besideTrips.value.get(id) ?? id === open?.id}
              onChange={event => tickTrip(id, event.currentTarget.checked)}
            />
            <span>
              <bdi>{tripName(draft)}</bdi>
              {demo ? ' (invented demo)' : ''}
            </span>
          </label>
        ))}
        {more}
      </fieldset>
    </details>
  )
}
