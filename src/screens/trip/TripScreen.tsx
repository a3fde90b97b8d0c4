// Trip: the stops and legs in order, and how this hiker walks, drinks and eats.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { Field, useFormats } from '../../components/fields'
import { toTop } from '../../components/frame'
import { entryProps, LongList } from '../../components/long-list'
import { Row } from '../../components/pieces'
import { addStop, type DraftStop, duplicateStop, moveStop, removeStop } from '../../plan'
import { actions, newId, openTrip, reckoned } from '../../store'
import { type Detail, firstId, rowActions } from '../rows'
import { FromTrack } from './FromTrack'
import { Carrier, Food, Pace, Water } from './Habits'
import { QuickStart } from './QuickStart'
import { StopEditor } from './StopEditor'
import { StopSummary } from './StopSummary'
import './trip.css'
import { TripProfile } from './TripProfile'
import { Weather } from './Weather'

const EDITS = { what: 'stop', move: moveStop, duplicate: duplicateStop, remove: removeStop }

export function TripScreen({ detail, onDetail }: Detail) {
  const stops = openTrip.value?.draft.trip.stops ?? []
  const [taken, setTaken] = useState(0)
  const onTaken = () => setTaken(taken + 1)
  return (
    <div class="screen trip-screen">
      <div class="stack trip-way">
        <h2>Trip</h2>
        <Field path="name" />
        {stops.length < 2 ? (
          <>
            <QuickStart />
            <FromTrack onTaken={onTaken} />
          </>
        ) : (
          <>
            <TripDoors stops={stops.length} />
            <TripProfile />
            <Stops stops={stops} detail={detail} onDetail={onDetail} taken={taken} />
          </>
        )}
      </div>
      <div class="stack trip-habits">
        <div class="stack">
          <Carrier />
          <Weather onDetail={onDetail} />
        </div>
        <div class="stack">
          <Water />
          <Food />
          <Pace />
          {stops.length < 2 ? null : (
            <details class="more section">
              <summary>
                <h3>Start over</h3>
              </summary>
              <section>
                <p class="hint">
                  From a few numbers or from a track. Replaces the stops above. You can undo it.
                </p>
                <QuickStart />
                <FromTrack onTaken={onTaken} />
              </section>
            </details>
          )}
        </div>
      </div>
    </div>
  )
}

function TripDoors({ stops }: { stops: number }) {
  return (
    <div class="actions">
      <button type="button" onClick={() => toTop('packing-day')}>
        Packing day
      </button>
      {stops > 2 ? (
        <button type="button" onClick={() => toTop('on-the-way')}>
          On the way
        </button>
      ) : null}
      <button type="button" onClick={() => toTop('after-trip')}>
        After the trip
      </button>
    </div>
  )
}

/** `taken` counts the tracks whose stops were taken over: the reader is then led to the stops. */
function Stops({ stops, detail, onDetail, taken }: Detail & { stops: DraftStop[]; taken: number }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (taken > 0) heading.current?.focus()
  }, [taken])
  const formats = useFormats()
  const result = reckoned.value?.reckoned
  const entries = useMemo(() => stops.map(({ id }) => ({ key: id })), [stops])
  const opened = detail?.startsWith('trip/stops/') ? detail.slice('trip/stops/'.length) : null
  const add = (at: number) => {
    const id = newId()
    actions.edit('Add a stop', draft => addStop(draft, firstId(id), { at }))
    onDetail(`trip/stops/${id}`)
  }
  return (
    <section>
      <h3 ref={heading} tabIndex={-1}>
        Stops
      </h3>
      {taken > 0 ? (
        <p class="hint" role="status">
          These are the stops from the track. Give each its water: only a water source you are sure of counts.
        </p>
      ) : null}
      <LongList
        entries={entries}
        open={opened}
        ordered
        class="stops"
        draw={(index, of) => {
          const stop = stops[index]!
          const path = `trip/stops/${stop.id}`
          const name = stop.name || stopName(index, stops.length)
          const computed = result?.ok ? (result.reckoning.legs[index - 1]?.hours ?? null) : null
          return (
            <Row
              key={stop.id}
              id={stop.id}
              entry={entryProps(stop.id, index, of)}
              open={detail === path}
              onToggle={() => onDetail(detail === path ? null : path)}
              summary={
                <StopSummary stop={stop} name={name} end={endAt(index, stops.length)} formats={formats} />
              }
              actions={rowActions(EDITS, { id: stop.id, name, index, count: stops.length })}
            >
              <StopEditor
                stop={stop}
                first={index === 0}
                last={index === stops.length - 1}
                computedHours={computed}
              />
              {index === stops.length - 1 ? null : (
                <button type="button" class="quiet" onClick={() => add(index + 1)}>
                  Add a stop after {name}
                </button>
              )}
            </Row>
          )
        }}
      />
      <button type="button" class="quiet" onClick={() => add(stops.length)}>
        Add a stop at the end
      </button>
    </section>
  )
}

const endAt = (index: number, count: number) => (index === 0 ? 'first' : index === count - 1 ? 'last' : null)

const stopName = (index: number, count: number) =>
  index === 0 ? 'Start' : index === count - 1 ? 'End' : `Stop ${index + 1}`
