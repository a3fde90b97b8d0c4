// Between sources: each stretch with the water it asks for, and what a camp at water would save on it. The reckonings
// behind it are made one by one while the section is open, and anew only when the typing has stopped.

import './dry-stretches.css'
import { useEffect, useState } from 'preact/hooks'
import { usePortions } from '../../components/long-list'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { dryStretchSteps, type DryStretches as Reckoned, reckoned } from '../../store'
import { Stretch } from './DryStretch'
import { Line } from './Line'

/** After the last change of the trip, ms. */
const QUIET_MS = 400

interface DryStretchesProps {
  reckoning: Reckoning
  formats: Formats
}

export function DryStretches({ reckoning, formats }: DryStretchesProps) {
  const most = Math.max(0, ...reckoning.carries.map(({ needLitres }) => needLitres))
  return (
    <Line label="Water between sources" figure={`up to ${formats.water(most)}`} figures="why">
      {() => <Opened formats={formats} />}
    </Line>
  )
}

function Opened({ formats }: Pick<DryStretchesProps, 'formats'>) {
  const ready = useStretches()
  const { drawn, more } = usePortions(ready?.stretches.length ?? 0, 'stretches')
  if (!ready) return null
  const { plan, stretches, campsLeft, capacityLitres } = ready
  return (
    <section class="stretches">
      <p class="hint" data-figures="typed">
        {capacityLitres === null
          ? 'No item in the gear holds water, so there is no limit here.'
          : `Your bottles hold ${formats.water(capacityLitres)}.`}
      </p>
      <ol class="stretch-list">
        {stretches.slice(0, drawn).map(stretch => (
          <Stretch key={stretch.carry.stop} {...{ stretch, plan, formats }} />
        ))}
      </ol>
      {more}
      {campsLeft > 0 ? (
        <p class="hint">
          Calculating {campsLeft === 1 ? 'one more dry camp' : `${campsLeft} more dry camps`}…
        </p>
      ) : null}
    </section>
  )
}

/** What is known so far. After an edit the former trip's stays, whole with its plan, until the typing has stopped. */
function useStretches(): Reckoned | null {
  const plan = reckoned.value?.plan
  const [ready, setReady] = useState<Reckoned | null>(() => dryStretchSteps().next().value ?? null)
  useEffect(() => {
    const steps = dryStretchSteps()
    const step = () => {
      const { value, done } = steps.next()
      if (done) return
      setReady(value)
      timer = setTimeout(step, 0)
    }
    let timer = setTimeout(step, ready?.plan === plan ? 0 : QUIET_MS)
    return () => clearTimeout(timer)
  }, [plan])
  return ready
}
