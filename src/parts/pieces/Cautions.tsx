// Cautions in their standard signal words: the word, then the hazard, its outcome and how to avoid it.

import type { Caution } from '../../report'

export function Cautions({ cautions }: { cautions: Caution[] }) {
  if (cautions.length === 0) return null
  return (
    <ul class="cautions">
      {cautions.map(({ signal, text }) => (
        <li key={text} class={`caution ${signal.toLowerCase()}`}>
          <strong>{signal}</strong> {text}
        </li>
      ))}
    </ul>
  )
}
