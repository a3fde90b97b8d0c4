// The answer in one line, in view on every screen while one types.

import { missingOf, shownIn } from '../../report'
import { reckoned } from '../../store'
import { useSystem } from '../fields'

export function Ticker({ onOpen }: { onOpen: () => void }) {
  const shown = shownIn(useSystem())
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const { leftOut } = open
  const { litres, mass } = missingOf(open)
  const { need } = open.reckoned.reckoning
  return (
    <button type="button" class="ticker" onClick={onOpen}>
      {litres.length ? 'at least ' : ''}
      <strong>{shown.litresUp(need.bodyLitres)}</strong> main body
      <span class="ticker-gap" />
      {mass.length ? 'at least ' : ''}
      <strong>{shown.kg(need.peakLoadKg)}</strong> heaviest
      <span class="unseen"> load, open the need</span>
      {leftOut.length ? <span class="ticker-note">{leftOut.length} assumed or left out</span> : null}
    </button>
  )
}
