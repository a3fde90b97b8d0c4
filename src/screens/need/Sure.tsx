// What would make the answer surer: three things to measure, each one tap from its measuring, and one's own packing.

import { useMemo } from 'preact/hooks'
import { OwnOffer } from '../../components/confidence'
import { goTo } from '../../components/frame'
import { MissingFigures } from '../../components/missing'
import { ToField, Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats, Missing } from '../../report'
import {
  isMeasured,
  type MeasureNext,
  measureNext,
  numberWord,
  type PackingPart,
  packingBasis,
} from '../../report/confidence'
import { openTrip, shelf } from '../../store'
import { counted } from '../../units'
import { Line } from './Line'
import { SimulationCheck } from './Simulation'
import './sure.css'

interface SureProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  missing: Missing
}

export function Sure({ plan, reckoning, formats, missing }: SureProps) {
  const next = useMemo(() => measureNext(plan, reckoning, formats), [plan, reckoning, formats])
  const trip = openTrip.value
  const measured = trip !== null && isMeasured(trip.draft, shelf.value.packings)
  const unknown = missing.litres.length + missing.mass.length
  // Of what is not counted at all no range can be told, so nothing can be said to narrow it.
  if (unknown > 0 && (missing.litres.length > 0 || !next))
    return (
      <Line label={LABEL} figure={`${counted(unknown, 'figure')} missing`} figures="typed" isOpen>
        {() => <First {...{ plan, missing, formats }} />}
      </Line>
    )
  if (!next) return null
  const { things, packing, now } = next
  return (
    <Line
      label={LABEL}
      figure={[now, ...(measured ? ['measured'] : toDo(next))].join(', ')}
      figures="why"
      isMadeAhead
    >
      {() => (
        <div class="sure">
          {unknown > 0 ? <First {...{ plan, missing, formats }} /> : null}
          <OwnOffer />
          <p class="hint">
            {packingBasis(plan)}.
            {measured ? ' Measured: this list was packed and held against its pack.' : ''}
          </p>
          {packing?.isLargest ? <Packing part={packing} isOwn={plan.packings.length > 0} /> : null}
          {things.length > 0 ? <h4>{titleOf(things.length)}</h4> : null}
          <Things next={next} />
          {packing?.isLargest ? null : (
            <button type="button" class="link" onClick={() => goTo('calibrate')}>
              Packed it? Say how full the pack was
            </button>
          )}
          <Why about={{ kind: 'sure' }} figure="Where the uncertainty comes from" />
          <SimulationCheck plan={plan} reckoning={reckoning} formats={formats} />
        </div>
      )}
    </Line>
  )
}

const LABEL = 'How sure it is'

const toDo = ({ things }: MeasureNext): string[] => (things.length > 0 ? [`measure ${things.length}`] : [])

/** What is not counted comes before all else: a figure for it, measured or guessed, beats every finer one. */
function First(props: Omit<SureProps, 'reckoning'>) {
  return (
    <div class="sure-packing">
      <h4>First say what nobody has said</h4>
      <p>A guess is better than nothing.</p>
      <MissingFigures {...props} />
    </div>
  )
}

const titleOf = (count: number) =>
  count === 1 ? 'Measure this next' : `Measure these ${numberWord(count)} next`

/** Where how one packs is the greatest doubt, a tape is not what helps most. */
function Packing({ part, isOwn }: { part: PackingPart; isOwn: boolean }) {
  return (
    <div class="sure-packing">
      <p>
        The biggest uncertainty is how tightly you pack ({part.share}). {part.gain}
      </p>
      <button type="button" onClick={() => goTo('calibrate')}>
        {isOwn ? 'Your own packing' : 'Use your own packing'}
      </button>
    </div>
  )
}

function Things({ next }: { next: MeasureNext }) {
  const { things, now, together, narrower } = next
  if (things.length === 0)
    return (
      <p>
        No item is worth measuring now. The best three together would narrow the range of {now} by less than
        half a litre.
      </p>
    )
  return (
    <>
      <ol class="to-measure">
        {things.map(({ id, name, share, gain, path }) => (
          <li key={id}>
            <ToField name={name} path={path} says={`${share}; ${gain}`} />
          </li>
        ))}
      </ol>
      <p class="hint">
        {things.length > 1 ? `With all ${numberWord(things.length)} measured` : 'Then'}: likely {together},{' '}
        {narrower} than now, should they take what the list says. If they do not, the middle moves too.
      </p>
    </>
  )
}
