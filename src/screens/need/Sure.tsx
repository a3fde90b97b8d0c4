// What would make the answer surer: three things to measure, each one tap from its measuring, and one's own packing.

import { useMemo } from 'preact/hooks'
import { focusField, Why } from '../../parts/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Shown } from '../../report'
import { type MeasureNext, measureNext, numberWord, type PackingPart } from '../../report/trust'
import { Trial } from './Trial'
import './sure.css'

interface SureProps {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  onGo: (path: string) => void
}

export function Sure({ plan, reckoning, shown, onGo }: SureProps) {
  const next = useMemo(() => measureNext(plan, reckoning, shown), [plan, reckoning, shown])
  if (!next) return null
  const { things, packing } = next
  return (
    <section class="sure" data-figures="why" aria-labelledby="sure">
      <h3 id="sure">How sure it is</h3>
      {packing?.isLargest ? (
        <Packing part={packing} isOwn={plan.settings.personalFactorSpread !== null} onGo={onGo} />
      ) : null}
      {things.length > 0 ? <h4>{titleOf(things.length)}</h4> : null}
      <Things next={next} onGo={onGo} />
      {packing?.isLargest ? null : (
        <button type="button" class="link" onClick={() => onGo('calibrate')}>
          I packed this list: say how full the pack was
        </button>
      )}
      <Why about={{ kind: 'sure' }} figure="Where the doubt comes from" onGo={onGo} />
      <Trial plan={plan} reckoning={reckoning} shown={shown} />
    </section>
  )
}

const titleOf = (count: number) =>
  count === 1 ? 'Measure this next' : `Measure these ${numberWord(count)} next`

/** Where how one packs is the greatest doubt, a tape is not what helps most. */
function Packing({ part, isOwn, onGo }: { part: PackingPart; isOwn: boolean; onGo: (path: string) => void }) {
  return (
    <div class="sure-packing">
      <p>
        How you pack is the greatest doubt: {part.share} of it. {part.gain}
      </p>
      <button type="button" onClick={() => onGo('calibrate')}>
        {isOwn ? 'Your own packing' : 'Reckon with your own packing'}
      </button>
    </div>
  )
}

function Things({ next, onGo }: { next: MeasureNext; onGo: (path: string) => void }) {
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
            <button
              type="button"
              class="quiet"
              onClick={() => {
                onGo(path)
                focusField(path)
              }}
            >
              <bdi class="name">{name}</bdi>
              <span class="facts-line">
                {share}; {gain}
              </span>
            </button>
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
