// The key of the load line: each band with what it weighs at the chosen moment, then the marks of the stops.

import { type Layers, type LoadBand, TOP_DOWN } from './bands'
import { Mark } from './mark'
import { Swatch } from './patterns'
import type { MarkKind } from './stop-strip'

const WORDS: Record<MarkKind, string> = {
  sure: 'water',
  doubtful: 'doubtful water',
  night: 'night',
  resupply: 'resupply',
}

export function BandKey({
  of,
  shown,
  values,
  format,
}: {
  of: string
  shown: readonly LoadBand[]
  values: Layers
  format(value: number): string
}) {
  return (
    <ul class="key">
      {TOP_DOWN.filter(({ band }) => shown.includes(band)).map(({ band, word }) => (
        <li key={band}>
          <Swatch of={of} band={band} />
          <span>
            {word} <b>{format(values[band] ?? 0)}</b>
          </span>
        </li>
      ))}
    </ul>
  )
}

export function MarkKey({ kinds }: { kinds: readonly MarkKind[] }) {
  if (kinds.length === 0) return null
  return (
    <ul class="key quiet">
      {kinds.map(kind => (
        <li key={kind}>
          <svg class="swatch mark-swatch" viewBox="-7 -7 14 14" aria-hidden="true">
            <Mark kind={kind} x={0} y={0} size={11} />
          </svg>
          {WORDS[kind]}
        </li>
      ))}
    </ul>
  )
}
