// One track of a file: what it measures, how to split it, and the stops it makes.

import { useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import {
  asChosen,
  type ChosenStop,
  keptStops,
  type MeasuredTrack,
  overLong,
  type ProfilePoint,
  type Proposal,
  proposeStops,
  type SplitBy,
  splitNote,
  toDraftStops,
  trackNotes,
} from '../../files/gpx'
import { defaults, emptyDraft, LIMITS, withStops } from '../../plan'

import { actions, newId, openTrip } from '../../store'
import { counted, parseQuantity } from '../../units'
import { GpxStops } from './GpxStops'

const usePace = (isNew: boolean) => ({
  ...defaults.PACE,
  ...(isNew ? {} : openTrip.value?.draft.trip.pace),
})

export interface GpxTrackProps {
  track: MeasuredTrack
  /** The stops become a trip of their own. */
  isNew: boolean
  /** Called when the trip has the stops, with the track's profile. */
  onUsed: (profile: ProfilePoint[]) => void
}

export function GpxTrack({ track, isNew, onUsed }: GpxTrackProps) {
  const formats = useFormats()
  const pace = usePace(isNew)
  const [by, setBy] = useState<SplitBy['by']>('days')
  const [texts, setTexts] = useState<Record<SplitBy['by'], string>>({ days: '3', hours: '6' })
  const [split, setSplit] = useState<SplitBy>({ by: 'days', days: 3 })
  const [proposal, setProposal] = useState(() => proposeStops(track, split, pace))
  const [chosen, setChosen] = useState<ChosenStop[]>(() => (proposal.ok ? asChosen(proposal.stops) : []))
  const typed = parseQuantity(by === 'days' ? 'count' : 'duration', texts[by], { system: formats.system })
  const problem = typed.ok ? (proposal.ok ? null : proposal.message) : typed.message

  function divide(next: SplitBy['by'], text: string) {
    setBy(next)
    setTexts({ ...texts, [next]: text })
    const amount = parseQuantity(next === 'days' ? 'count' : 'duration', text, { system: formats.system })
    if (!amount.ok || amount.empty) return
    const wanted: SplitBy =
      next === 'days' ? { by: 'days', days: amount.value } : { by: 'hours', hours: amount.value }
    if (JSON.stringify(wanted) === JSON.stringify(split)) return
    const made = proposeStops(track, wanted, pace)
    setSplit(wanted)
    setProposal(made)
    if (made.ok) setChosen(asChosen(made.stops, chosen))
  }

  const kept = keptStops(track, chosen)
  const tooLong = overLong(kept)

  function use() {
    const stops = toDraftStops(kept, newId)
    if (isNew) actions.createTrip(withStops(emptyDraft(), stops))
    else actions.edit('Stops from a track', draft => withStops(draft, stops))
    onUsed(track.profile)
  }

  return (
    <>
      <Facts track={track} />
      <fieldset>
        <legend>Split by</legend>
        <div class="options">
          {(['days', 'hours'] as const).map(each => (
            <label key={each} class="option">
              <input
                type="radio"
                name="gpx-split"
                checked={by === each}
                onChange={() => divide(each, texts[each])}
              />
              <span>{each === 'days' ? 'Days' : 'Hours of walking a day'}</span>
            </label>
          ))}
        </div>
        <label class="field">
          {by === 'days' ? 'Days' : 'Hours of walking a day, at most'}
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={texts[by]}
            aria-invalid={problem ? 'true' : undefined}
            aria-describedby="gpx-split-note"
            onInput={event => divide(by, event.currentTarget.value)}
          />
        </label>
        <p id="gpx-split-note" class={problem ? 'problem' : 'hint'} data-figures="cited">
          {problem ?? (proposal.ok ? daysText(proposal, formats.hours, isNew) : '')}
        </p>
        <p class="hint" data-figures="cited">
          {splitNote(formats)}
        </p>
      </fieldset>
      {proposal.ok && !problem ? (
        <>
          <GpxStops {...{ kept, chosen, pace }} days={proposal.days} onChange={setChosen} />
          {tooLong ? (
            <p class="problem">
              The leg to <bdi>{tooLong.name}</bdi> is longer or steeper than a leg can be: up to{' '}
              {formats.km(LIMITS.leg.km.max)} and {formats.metres(LIMITS.leg.ascentM.max)} of climb. Add days,
              or keep a stop before it.
            </p>
          ) : null}
          <button type="button" class="primary" disabled={tooLong !== null} onClick={use}>
            Use these stops
          </button>
          <p class="hint">
            {isNew ? 'They become a new trip.' : 'Replaces the stops of this trip.'} You can undo it.
          </p>
        </>
      ) : null}
    </>
  )
}

function daysText(
  { days, hoursADay, leftOut }: Proposal,
  hours: (h: number) => string,
  isNew: boolean,
): string {
  const pace = isNew ? 'the pace of a new trip' : 'this trip’s pace'
  const text = `${counted(days, 'day')} of about ${hours(hoursADay)} of walking at ${pace}, without breaks.`
  return leftOut > 0 ? `${text} ${leftOut} waypoints found no room.` : text
}

function Facts({ track }: { track: MeasuredTrack }) {
  const formats = useFormats()
  const { sums, km, elevation } = track
  const climb =
    elevation === 'none'
      ? ''
      : `, ${formats.metres(sums.ascentM.at(-1) ?? 0)} up, ${formats.metres(sums.descentM.at(-1) ?? 0)} down`
  return (
    <div data-figures="cited">
      <p>
        <bdi class="name">{track.name}</bdi>: {formats.km(km)}
        {climb}
      </p>
      {trackNotes(track, formats).map(note => (
        <p class="hint" key={note}>
          {note}
        </p>
      ))}
    </div>
  )
}
