// What to ask for in a shop: a few large figures, each with a word on it.

import type { Shown } from '../../report'
import { type Asked, requirementRows } from '../../report/choosing'
import './loose.css'

export function AskedCard({ asked, shown }: { asked: Asked; shown: Shown }) {
  return (
    <dl class="asked">
      {requirementRows(asked, shown).map(({ name, figure, note }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <strong class="asked-figure">{figure}</strong> <span class="hint">{note}</span>
          </dd>
        </div>
      ))}
    </dl>
  )
}
