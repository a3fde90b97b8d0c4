// What could hurt on this trip: the gravest in one line each, the others behind one tap.

import { Cautions } from '../pieces'
import { Ask, Why } from '../why'
import './judged.css'
import { belongsAtAnswer, type Caution } from '../../report'

/** So many lines leave the pictures in view on a phone. */
const MOST_LINES = 2

/** `cautions`: those about this trip. */
export function Warnings({ cautions }: { cautions: readonly Caution[] }) {
  const lines = cautions.filter(belongsAtAnswer).slice(0, MOST_LINES)
  const others = cautions.filter(caution => !lines.includes(caution))
  if (cautions.length === 0) return null
  return (
    <ul class="warnings cluster" aria-label="Warnings">
      {lines.map(caution => (
        <Line key={caution.text} caution={caution} />
      ))}
      {others.length > 0 ? (
        <li class="warnings-more">
          <Ask title="Cautions for this trip" answer={() => <Cautions cautions={others} />}>
            {others.length} {lines.length > 0 ? 'more' : others.length === 1 ? 'caution' : 'cautions'}
          </Ask>
        </li>
      ) : null}
    </ul>
  )
}

function Line({ caution }: { caution: Caution }) {
  const { signal, text, short, more = [], asks = [] } = caution
  return (
    <li class={`warning-line ${signal.toLowerCase()}`} data-figures={asks.length > 0 ? 'why' : 'cited'}>
      <Why
        about={asks.map(({ about }) => about)}
        title={signal}
        class="warning-ask"
        figure={
          <>
            <strong>{signal}</strong> <span>{short ?? text}</span>
          </>
        }
      >
        {[text, ...more].map(line => (
          <p key={line}>{line}</p>
        ))}
      </Why>
    </li>
  )
}
