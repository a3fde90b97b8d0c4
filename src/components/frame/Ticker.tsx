// The answer in one line, in view on every screen while one types.

import { missingOf, takesNothing } from '../../report'
import { isBehind, reckoned } from '../../store'
import { useFormats } from '../fields'

import { isTelling } from './UndoBar'
import { useLastChange } from './use-last-change'

export function Ticker({ onOpen }: { onOpen: () => void }) {
  const formats = useFormats()
  const { short: change } = useLastChange()
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const { leftOut } = open
  const { litres, mass } = missingOf(open.plan)
  const { need } = open.reckoned.reckoning
  if (takesNothing(open.plan))
    return (
      <button type="button" class="ticker" onClick={onOpen}>
        No gear yet<span class="unseen">, open the need</span>
      </button>
    )
  return (
    <button type="button" class="ticker" aria-busy={isBehind.value ? 'true' : undefined} onClick={onOpen}>
      {litres.length ? 'at least ' : ''}
      <strong>{formats.litresUp(need.bodyLitres)}</strong> main body
      <span class="ticker-gap" />
      {mass.length ? 'at least ' : ''}
      <strong>{formats.kg(need.peakLoadFullWaterKg)}</strong> heaviest
      <span class="unseen"> load, open the need</span>
      {change && !isTelling() ? <span class="ticker-note">Changed: {change}</span> : null}
      {need.waterShortLitres > 0 ? <span class="ticker-note">short of water</span> : null}
      {leftOut.length ? <span class="ticker-note">{leftOut.length} assumed or left out</span> : null}
    </button>
  )
}
