// The answer in one line, in view on every screen while one types.

import { shownIn } from '../../report'
import { reckoned } from '../../store'
import { useSystem } from '../fields'

export function Ticker({ onOpen }: { onOpen: () => void }) {
  const shown = shownIn(useSystem())
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const { leftOut } = open
  const { need } = open.reckoned.reckoning
  return (
    <button type="button" class="ticker" onClick={onOpen}>
      <strong>{shown.litresUp(need.bodyLitres)}</strong> main body
      <span class="ticker-gap" />
      <strong>{shown.kg(need.peakLoadKg)}</strong> peak load
      <span class="unseen">, open the need</span>
      {leftOut.length ? <span class="ticker-note">{leftOut.length} assumed or left out</span> : null}
    </button>
  )
}
