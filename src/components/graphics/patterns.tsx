// The bands' fills: a tone, a hue and a pattern each, so that any one of the three is enough to tell them apart.
// Tones and ink come from custom properties (pictures.css), which forced colours and print turn to black and white.

import type { Band } from './bands'

const TILE: Record<Band, { size: number; d: string; dots?: string }> = {
  kept: { size: 8, d: '' },
  kept1: { size: 10, d: 'M0 5H5' },
  kept2: { size: 12, d: '', dots: 'M3 3h0M9 9h0' },
  kept3: { size: 8, d: 'M0 4H8' },
  spread: { size: 9, d: '', dots: 'M2 2h0M6.5 6.5h0' },
  nightly: { size: 6, d: 'M3 0V6' },
  daily: { size: 7, d: 'M-1 1L1-1M0 7L7 0M6 8L8 6' },
  rubbish: { size: 6, d: 'M0 0L6 6M6 0L0 6' },
  water: { size: 12, d: 'M0 3Q3 0 6 3T12 3M-6 9Q-3 6 0 9T6 9T12 9T18 9' },
  wanted: { size: 7, d: 'M1 -1L-1 1M7 0L0 7M8 6L6 8' },
}

/** Where to point a fill; `of` is the drawing's own id. */
export const fillOf = (of: string, band: Band): string => `url(#${of}-${band})`

function Tile({ id, band }: { id: string; band: Band }) {
  const { size, d, dots } = TILE[band]
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse">
      <rect width={size} height={size} class={`tone-${band}`} />
      {d && <path d={d} class="texture" />}
      {dots && <path d={dots} class="texture dots" />}
    </pattern>
  )
}

export function Patterns({ of, bands }: { of: string; bands: readonly Band[] }) {
  return (
    <>
      {bands.map(band => (
        <Tile key={band} id={`${of}-${band}`} band={band} />
      ))}
    </>
  )
}

/** A sample of a band for a key. */
export function Swatch({ of, band }: { of: string; band: Band }) {
  return (
    <svg class="swatch" aria-hidden="true">
      <rect width="100%" height="100%" fill={fillOf(of, band)} />
    </svg>
  )
}
