// On the way: where one stands, by one tap, and what should then be left, what is on the back until food is bought again,
// whether a resupply can be skipped, how far what is really left lasts, and the pace really walked.

import { useMemo } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { toTop } from '../../components/frame'
import type { TripLog } from '../../plan'

import { onTheWayAt, openTrip, reckoned } from '../../store'
import { Left } from './Left'
import { ReallyLeft } from './ReallyLeft'
import { Times } from './Times'
import { Where } from './Where'

/** As the stored place names it. */
const ON_THE_WAY = 'on-the-way'
const AT = 'trip/stops/'

export function OnTheWayScreen({ detail }: { detail: string | null }) {
  const formats = useFormats()
  const { draft } = openTrip.value ?? {}
  const stops = draft?.trip.stops ?? []
  const log = draft?.log ?? {}
  const stopIds = useMemo(() => stops.map(({ id }) => id), [draft?.trip.stops])
  const open = reckoned.value
  // A stop that is gone, or is the end by now, is none.
  const stop = detail?.startsWith(AT) ? stops.findIndex(({ id }) => id === detail.slice(AT.length)) : -1
  const left = useMemo(() => (open ? onTheWayAt(open, stop) : null), [open, stop])
  const go = (index: number) => toTop(ON_THE_WAY, `${AT}${stops[index]!.id}`)
  const result = open?.reckoned
  return (
    <div class="screen on-the-way">
      <div class="heading">
        <h2>On the way</h2>
        <button type="button" class="quiet" aria-label="Back to trip" onClick={() => toTop('trip')}>
          Back
        </button>
      </div>
      {result && !result.ok ? <p class="problem">{result.problem.said}</p> : null}
      {open && result?.ok ? (
        <>
          <Where plan={open.plan} reckoning={result.reckoning} at={left ? stop : null} onStop={go} />
          {left ? (
            <>
              <Left left={left} plan={open.plan} reckoning={result.reckoning} formats={formats} />
              <ReallyLeft
                id={stopIds[stop]!}
                at={leftAt(log, stopIds[stop]!)}
                left={left}
                plan={open.plan}
                reckoning={result.reckoning}
                formats={formats}
              />
              <Times
                {...{ stop, left, log, stopIds, formats }}
                plan={open.plan}
                reckoning={result.reckoning}
              />
            </>
          ) : null}
        </>
      ) : null}
    </div>
  )
}

const leftAt = ({ left }: TripLog, id: string) => (left && Object.hasOwn(left, id) ? left[id]! : {})
