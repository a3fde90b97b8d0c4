// One track of a file: what it measures, how to split it, and the stops it makes.

import { useMemo, useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'
import { TerrainPicture } from '../../components/graphics'
import {
  asChosen,
  type ChosenStop,
  DAY_HOURS,
  dayHours,
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
import { type Draft, defaults, emptyDraft, LIMITS, withStops } from '../../plan'

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
  const [by, setBy] = useState<SplitBy['by']>('hours')
  const [split, setSplit] = useState<SplitBy>({ by: 'hours', hours: DAY_HOURS })
  const [proposal, setProposal] = useState(() => proposeStops(track, split, pace))
  const [chosen, setChosen] = useState<ChosenStop[]>(() => (proposal.ok ? asChosen(proposal.stops) : []))
  const [texts, setTexts] = useState<Record<SplitBy['by'], string>>({
    days: proposal.ok ? String(proposal.days) : '',
    hours: String(DAY_HOURS),
  })
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
    if (!made.ok) return
    setChosen(asChosen(made.stops, chosen))
    // The other way to split begins where this one has led.
    if (next === 'hours') setTexts({ hours: text, days: String(made.days) })
  }

  const kept = useMemo(() => keptStops(track, chosen), [track, chosen])
  const tooLong = overLong(kept)
  const name = track.isNamed ? track.name : ''

  const hoursADay = proposal.ok && !problem ? proposal.hoursADay : 0
  const atMost = parseQuantity('duration', texts.hours, { system: formats.system })
  const most = atMost.ok && !atMost.empty ? atMost.value : DAY_HOURS
  const isOver = by === 'days' && hoursADay > most

  function use() {
    const stops = toDraftStops(kept, newId)
    const over = (draft: Draft): Draft => {
      const called = draft.name || name
      return { ...withStops(draft, stops), ...(called && { name: called }) }
    }
    if (isNew) actions.createTrip(over(emptyDraft()))
    else actions.edit('Stops from a track', over)
    onUsed(track.profile)
  }

  return (
    <>
      <Facts track={track} />
      <TerrainPicture stops={kept} profile={track.profile} format={formats} />
      <fieldset>
        <legend>Split by</legend>
        <div class="options">
          {(['hours', 'days'] as const).map(each => (
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
        {proposal.ok && !problem ? <DayLengths hours={dayHours(kept, pace)} /> : null}
        {isOver ? (
          <button type="button" class="quiet" onClick={() => divide('hours', texts.hours)}>
            Split by at most {formats.hours(most)} a day
          </button>
        ) : null}
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
            {isNew ? 'They become a new trip.' : 'Replaces the stops of this trip.'}
            {name && (isNew || !openTrip.value?.draft.name) ? (
              <>
                {' '}
                It is named <bdi>{name}</bdi>.
              </>
            ) : null}{' '}
            You can undo it.
          </p>
        </>
      ) : null}
    </>
  )
}

/** Camps at waypoints make days uneven: the longest is told. */
function DayLengths({ hours: days }: { hours: readonly number[] }) {
  const { hours } = useFormats()
  const longest = Math.max(...days)
  if (days.length < 2) return null
  return (
    <p class="hint" data-figures="cited">
      The longest is day {days.indexOf(longest) + 1}: {hours(longest)}.
    </p>
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
