// The answer in one line, in view on every screen while one types.

import { shownIn } from '../../report'
import { reckoned } from '../../store'
import { useSystem } from '../fields'

export function Ticker({ onOpen }: { onOpen: () => void }) {
  const shown = shownIn(useSystem())
  const { result, leftOut } = reckoned.value
  if (!result.ok) return null
  const { need } = result.reckoning
  return (
    <button type="button" class="ticker" onClick={onOpen} aria-label="Open the need">
      <strong>{shown.litresUp(need.bodyLitres)}</strong> main body
      <span class="ticker-gap" />
      <strong>{shown.kg(need.peakLoadKg)}</strong> at the heaviest
      {leftOut.length ? <span class="ticker-note">{leftOut.length} not counted</span> : null}
    </button>
  )
}
