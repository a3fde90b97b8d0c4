// When a stop was reached: the pace really walked, the rest of the trip at that pace, and one tap to keep it.

import { useMemo } from 'preact/hooks'
import { Cautions } from '../../components/pieces'
import { Why } from '../../components/why'
import { fieldPath, type Plan, type TripLog, withPaceBy } from '../../plan'
import type { OnTheWay, Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { aheadAt, aheadLines, dryAhead, walkedPace, walkedText } from '../../report/really-left'
import { actions } from '../../store'
import { TimeField } from './TimeField'

interface TimesProps {
  plan: Plan
  reckoning: Reckoning
  log: TripLog
  stopIds: readonly string[]
  /** The index of the stop, and what should be left there; null at the end. */
  stop: number
  left: OnTheWay | null
  formats: Formats
}

export function Times({ plan, reckoning, log, stopIds, stop, left, formats }: TimesProps) {
  const { stops } = plan.trip
  const [before, here] = [stops[stop - 1]!, stops[stop]!]
  const asked = { plan, reckoning, log, stopIds }
  const noted = walkedPace(asked)
  const walked = noted?.isSane ? noted : null
  const factor = walked?.factor ?? 1
  // A whole reckoning: not again for what does not touch it.
  const ahead = useMemo(
    () => (left ? aheadAt(asked, stop, factor) : null),
    [plan, reckoning, log.reached, log.setOff, stop, factor],
  )
  const lines = ahead && left ? aheadLines(ahead, left, formats) : []
  return (
    <section aria-labelledby="times">
      <h3 id="times">Your pace</h3>
      <div class="fields">
        <TimeField
          path={fieldPath('log', 'setOff', stopIds[stop - 1] ?? '')}
          label={`Left ${before.name}`}
          {...(before.nights === 0 && stop > 1 ? { hint: 'Empty: as you reached it.' } : {})}
        />
        <TimeField path={fieldPath('log', 'reached', stopIds[stop] ?? '')} label={`Reached ${here.name}`} />
        {left && here.nights > 0 ? (
          <TimeField path={fieldPath('log', 'setOff', stopIds[stop] ?? '')} label={`Left ${here.name}`} />
        ) : null}
      </div>
      {noted && !walked ? <p class="problem">These times cannot be right: look at them again.</p> : null}
      {walked || lines.length > 0 ? (
        <div data-figures="why" class="stack walked">
          {walked ? <p>{walkedText(walked, formats)}</p> : null}
          {lines.length > 0 ? (
            <>
              <h4>Walking from here, {walked ? 'at this pace' : 'as planned'}</h4>
              <dl class="facts">
                {lines.map(({ what, says }) => (
                  <div key={what}>
                    <dt>
                      <bdi>{what}</bdi>
                    </dt>
                    <dd>{says}</dd>
                  </div>
                ))}
              </dl>
            </>
          ) : null}
          {walked && ahead ? <Cautions cautions={dryAhead(ahead, stop, formats)} /> : null}
          {walked && walked.factor.toFixed(2) !== '1.00' ? (
            <Keep pace={plan.trip.pace} factor={walked.factor} />
          ) : null}
          <Why
            about={{
              kind: 'noted',
              title: 'Your pace',
              says: 'The times you noted, breaks included, held against the plan’s walking times of the same legs. The legs ahead take that many times the time, and their water follows. A leg with a walking time of your own stays out of it. With no times noted: as planned.',
              lines: [
                ...lines.map(({ what, says }) => ({ label: what, value: says })),
                { label: 'So far', value: walked ? walkedText(walked, formats) : 'no times noted' },
              ],
            }}
            figure="How this is calculated"
          />
        </div>
      ) : null}
    </section>
  )
}

function Keep({ pace, factor }: { pace: Plan['trip']['pace']; factor: number }) {
  return (
    <>
      <button
        type="button"
        onClick={() => actions.edit('Keep your pace', draft => withPaceBy(draft, pace, factor))}
      >
        Keep this pace
      </button>
      <p class="hint">For this trip and its copies. Walking times you typed stay.</p>
    </>
  )
}
