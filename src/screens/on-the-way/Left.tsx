// What should be left on leaving a stop, what is on the back until food is bought again, and each resupply skipped.

import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { OnTheWay, Reckoning } from '../../reckon'
import { type Formats, leftLines, missingOf, notInItText, skipText, untilNext } from '../../report'

interface LeftProps {
  left: OnTheWay
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function Left({ left, plan, reckoning, formats }: LeftProps) {
  const { stops } = plan.trip
  const { to, isEnd, rows } = untilNext(left, { plan, reckoning, formats })
  const missing = missingOf(plan)
  const notIn = (['mass', 'litres'] as const).map(figure => notInItText(missing, figure)).filter(Boolean)
  const skippable = stops.filter(({ resupply }, i) => resupply && i > left.stop).length
  return (
    <div class="left" data-figures="why">
      <section aria-labelledby="left-now">
        <h3 id="left-now">Should be left, as you leave</h3>
        <dl class="facts">
          {leftLines(left, plan, formats).map(({ what, amount }) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{amount}</dd>
            </div>
          ))}
        </dl>
        {notIn.length ? <p class="hint">At least: {notIn.join(', ')}.</p> : null}
      </section>
      <section aria-labelledby="left-until">
        <h3 id="left-until">
          On your back {isEnd ? 'to the end' : 'until you resupply'}, <bdi>{stops[to]!.name}</bdi>
        </h3>
        <dl class="facts">
          {rows.map(({ stop, says }) => (
            <div key={stop}>
              <dt>
                Leaving <bdi>{stops[stop]!.name}</bdi>
              </dt>
              <dd>{says}</dd>
            </div>
          ))}
        </dl>
      </section>
      {left.ifSkipped.map(skipped => (
        <section key={skipped.stop} aria-labelledby={`skip-${skipped.stop}`}>
          <h3 id={`skip-${skipped.stop}`}>
            Skip the resupply at <bdi>{stops[skipped.stop]!.name}</bdi>?
          </h3>
          <p>{skipText(skipped, left, formats)}</p>
        </section>
      ))}
      {skippable === 0 ? <p class="hint">No resupply lies ahead.</p> : null}
      {skippable > left.ifSkipped.length ? (
        <p class="hint">The next {left.ifSkipped.length} resupplies are looked at.</p>
      ) : null}
      <Why about={{ kind: 'on-the-way', left }} figure="How this is calculated" />
    </div>
  )
}
