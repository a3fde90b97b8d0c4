// What to ask for in a shop: a few large figures, each with a word on it.

import type { Formats } from '../../report'
import { type Asked, requirementRows } from '../../report/compare-packs'
import type { NamedPlan } from '../../report/why'
import { Why } from '../why'
import './judged.css'

interface AskedCardProps {
  asked: Asked
  /** The trips that ask for it. */
  trips: readonly NamedPlan[]
  formats: Formats
}

export function AskedCard({ asked, trips, formats }: AskedCardProps) {
  return (
    <div class="figures" data-figures="why">
      <dl class="asked">
        {requirementRows(asked, formats).map(({ name, figure, note }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <strong class="asked-figure">{figure}</strong> <span class="hint">{note}</span>
            </dd>
          </div>
        ))}
      </dl>
      <Why about={{ kind: 'asked', trips, packKg: asked.packKg }} figure="Why these figures" />
    </div>
  )
}
