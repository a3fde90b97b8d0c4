// The sheet before it is printed: the paper as it will be, scaled to the screen, with the button that prints it.

import { useFormats } from '../../components/fields'
import './sheet.css'
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'

import { later } from '../../components/frame'
import { dateText } from '../../components/pieces'
import { personName } from '../../plan'

import { packedByPlace } from '../../report/packing-day'
import { openTrip, person, reckoned } from '../../store'
import { IN_SIGHT, useRows } from './rows'
import { Sheet, type SheetProps } from './Sheet'

const Whose = later(async () => (await import('../party')).Whose)

/** Width of the paper between its margins, CSS px: what A4 leaves, which Letter has too. */
const PAPER_PX = 718

export function SheetScreen({ onClose }: { onClose: () => void }) {
  const formats = useFormats()
  const open = reckoned.value
  if (!open) return null
  const { plan, listed, leftOut, reckoned: result, taken } = open
  return (
    <div class="screen sheet-screen">
      <div class="heading">
        <h1>Sheet</h1>
        <button type="button" class="quiet" onClick={onClose}>
          Back
        </button>
      </div>
      {person.value === null ? null : <Whose />}
      {result.ok ? (
        <Paper
          plan={plan}
          atHome={listed.gear.filter(item => item.atHome)}
          reckoning={result.reckoning}
          formats={formats}
          whose={nameOfPerson()}
          {...{ leftOut, taken }}
        />
      ) : (
        <p class="problem">{result.problem.said}</p>
      )}
    </div>
  )
}

/** Whose sheet it is, of several people; of a lone hiker nothing. */
function nameOfPerson(): string {
  const draft = openTrip.value?.draft
  return draft && person.value !== null ? personName(draft, person.value) : ''
}

function Paper(props: Omit<SheetProps, 'rows' | 'printed'>) {
  const { box, zoom } = useZoom()
  const { gear } = props.plan
  const { rows, isWhole } = useRows(props.plan, props.reckoning)
  const isAllInSight = useMemo(
    () => packedByPlace(gear).every(place => place.rows.length <= IN_SIGHT),
    [gear],
  )
  return (
    <>
      <div class="actions">
        {isWhole ? (
          <button type="button" class="primary" onClick={() => print()}>
            Print
          </button>
        ) : (
          <p>Laying out the rest…</p>
        )}
        {isAllInSight ? null : (
          <p class="hint">Here the first {IN_SIGHT} items of each place are shown. All are printed.</p>
        )}
      </div>
      <div class="sheet-window" ref={box}>
        <div class="sheet-paper" style={{ '--zoom': zoom }}>
          <Sheet {...props} rows={rows} printed={dateText(Date.now())} />
        </div>
      </div>
    </>
  )
}

/** How much smaller the paper must be to fit the screen; it is laid out at its own width all the same. */
function useZoom() {
  const box = useRef<HTMLDivElement>(null)
  const [zoom, setZoom] = useState(1)
  useLayoutEffect(() => {
    const look = () => setZoom(Math.min(1, (box.current?.clientWidth || PAPER_PX) / (PAPER_PX + 2 * 24)))
    look()
    addEventListener('resize', look)
    return () => removeEventListener('resize', look)
  }, [])
  return { box, zoom }
}
