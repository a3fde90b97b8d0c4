// The load line: what is carried along the trip, drawn like a terrain profile, with a cursor that reads out any
// moment and a table that says the same.

import './pictures.css'
import { useId, useMemo, useState } from 'preact/hooks'
import type { Moment } from '../../reckon'
import { bandsIn } from './bands'
import { Cursor } from './cursor'
import { LoadBands, LoadWords } from './load-drawing'
import { BandKey, MarkKey } from './load-key'
import { type LoadPicture, withWantedWater } from './load-picture'
import { planLoadLine } from './load-plan'
import { LoadTable } from './load-table'
import { loadSummary, momentInFull, momentLines } from './load-words'
import { Patterns } from './patterns'
import { clamp, px } from './scale'
import { useRoom } from './use-drawing'

export interface LoadLineProps extends Omit<LoadPicture, 'moments'> {
  moments: readonly Moment[]
  /** Index of the moment under the cursor; held to the moments there are. */
  moment: number
  onMoment(index: number): void
  /** Key and table stand elsewhere. */
  isBare?: boolean
}

/** `moments`, `stops`, `limits`, `format` and `profile` should keep their identity between renders: the drawing is kept by it. */
export function LoadLine(props: LoadLineProps) {
  return props.moments.length > 0 ? <Drawn {...props} /> : null
}

type TableProps = Omit<LoadPicture, 'moments'> & Pick<LoadLineProps, 'moments'>

/** All that the load line plots, where it stands apart from the picture. */
export function LoadLineTable({ moments, ...picture }: TableProps) {
  return (
    <div class="picture">
      <LoadTable {...picture} moments={moments.map(withWantedWater)} />
    </div>
  )
}

function Drawn({ moments: all, moment, onMoment, isBare = false, ...picture }: LoadLineProps) {
  const { stops, limits, format, profile, warnings, isPeakTold } = picture
  const moments = useMemo(() => all.map(withWantedWater), [all])
  const of = useId()
  const { ref, room, isMeasured } = useRoom()
  const [heard, setHeard] = useState(false)
  const shown = useMemo(
    () => ({ moments, stops, limits, format, profile, warnings, isPeakTold }),
    [moments, stops, limits, format, profile, warnings, isPeakTold],
  )
  const bands = useMemo(() => bandsIn(moments.map(m => m.kg)), [moments])
  const plan = useMemo(() => (isMeasured ? planLoadLine(shown, room) : null), [shown, room])
  const patterns = useMemo(
    () => (
      <defs>
        <Patterns of={of} bands={bands} />
      </defs>
    ),
    [of, bands],
  )
  const under = useMemo(() => plan && <LoadBands plan={plan} of={of} />, [plan, of])
  const over = useMemo(() => plan && <LoadWords plan={plan} />, [plan])
  const summary = useMemo(() => (plan ? loadSummary(shown) : ''), [plan, shown])
  const table = useMemo(() => (isBare ? null : <LoadTable {...shown} />), [shown, isBare])
  if (!plan)
    return (
      <figure class="picture load-line">
        <div class="drawing" ref={ref} />
      </figure>
    )
  const index = clamp(Math.trunc(moment) || 0, 0, moments.length - 1)
  const { plot, terrain } = plan
  const [head, then] = momentLines(index, shown)
  const x = px(plan.xs[index]!)
  const groundY = terrain?.stopYs[moments[index]!.stop] ?? null
  const step = (by: number) => () => {
    const next = clamp(index + by, 0, moments.length - 1)
    if (next !== index) onMoment(next)
  }
  return (
    <figure class={`picture load-line${terrain ? ' over-ground' : ''}`}>
      <div class="drawing" ref={ref}>
        <svg
          class={plan.dense ? 'dense' : ''}
          width={plan.widthPx}
          height={plan.heightPx}
          role="img"
          aria-label={summary}
        >
          {patterns}
          {under}
          <path class="now" d={`M${x} ${px(plot.top - 6)}V${px((terrain ?? plot).bottom + 6)}`} />
          {over}
          <circle class="knob" cx={x} cy={px(plan.ys[index]!.at(-1)!)} r="7" />
          {groundY !== null && <circle class="knob" cx={x} cy={px(groundY)} r="5" />}
        </svg>
        <Cursor
          xs={plan.xs}
          moment={index}
          onMoment={onMoment}
          valueText={momentInFull(index, shown)}
          top={plan.handTop}
          heightPx={Math.ceil(plan.strip.bottom - plan.handTop)}
        />
      </div>
      <div class="readout" onFocusIn={() => setHeard(true)} onFocusOut={() => setHeard(false)}>
        <button type="button" aria-label="Earlier moment" aria-disabled={index === 0} onClick={step(-1)}>
          ‹
        </button>
        {/* The slider speaks its own value; this line speaks only for the two buttons. */}
        <p dir="auto" aria-live={heard ? 'polite' : 'off'}>
          <strong>{head}</strong> <span class="then">{then}</span>
        </p>
        <button
          type="button"
          aria-label="Later moment"
          aria-disabled={index === moments.length - 1}
          onClick={step(1)}
        >
          ›
        </button>
      </div>
      {isBare ? null : (
        <>
          <BandKey of={of} shown={bands} values={moments[index]!.kg} format={format.kg} />
          <MarkKey kinds={plan.strip.marks.map(mark => mark.kind)} />
        </>
      )}
      {table}
    </figure>
  )
}
