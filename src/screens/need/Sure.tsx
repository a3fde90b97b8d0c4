// What would make the answer surer: three things to measure, each one tap from its measuring, and one's own packing.

import { useMemo } from 'preact/hooks'
import { goTo } from '../../components/frame'
import { MissingFigures } from '../../components/missing'
import { ToField, Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats, Missing } from '../../report'
import { type MeasureNext, measureNext, numberWord, type PackingPart } from '../../report/confidence'
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
  const unknown = missing.litres.length + missing.mass.length > 0
  // Of what is not counted at all no range can be told, so nothing can be said to narrow it.
  if (unknown && (missing.litres.length > 0 || !next))
    return (
      <section class="sure" data-figures="typed" aria-labelledby="sure">
        <h3 id="sure">How sure it is</h3>
        <First {...{ plan, missing, formats }} />
      </section>
    )
  if (!next) return null
  const { things, packing } = next
  return (
    <section class="sure" data-figures="why" aria-labelledby="sure">
      <h3 id="sure">How sure it is</h3>
      {unknown ? <First {...{ plan, missing, formats }} /> : null}
      {packing?.isLargest ? <Packing part={packing} isOwn={plan.packings.length > 0} /> : null}
      {things.length > 0 ? <h4>{titleOf(things.length)}</h4> : null}
      <Things next={next} />
      {packing?.isLargest ? null : (
        <button type="button" class="link" onClick={() => goTo('calibrate')}>
          I packed this list: say how full the pack was
        </button>
      )}
      <Why about={{ kind: 'sure' }} figure="Where the doubt comes from" />
      <SimulationCheck plan={plan} reckoning={reckoning} formats={formats} />
    </section>
  )
}

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
        How you pack is the greatest doubt: {part.share} of it. {part.gain}
      </p>
      <button type="button" onClick={() => goTo('calibrate')}>
        {isOwn ? 'Your own packing' : 'Reckon with your own packing'}
      </button>
    </div>
  )
}

function Things({ next }: { next: MeasureNext }) {
  const { things, now, together, narrower } = next
  if (things.length === 0)
    return (
      <p>
        No thing is worth measuring now: those that would help most, three together, take less than half a
        litre off the range of {now}.
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
