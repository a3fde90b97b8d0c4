// While several are chosen: how many, and what can be done with them.

import { openTrip } from '../../store'
import { choose, chosen } from './view'

interface ChosenBarProps {
  onPack: () => void
  onChange: () => void
  onDone: () => void
}

export function ChosenBar({ onPack, onChange, onDone }: ChosenBarProps) {
  const n = chosen.value.size
  return (
    <div class="chosen-bar">
      <p role="status">
        <strong>{n}</strong> chosen
      </p>
      {openTrip.value ? (
        <button type="button" disabled={n === 0} onClick={onPack}>
          Pack
        </button>
      ) : null}
      <button type="button" disabled={n === 0} onClick={onChange}>
        Change
      </button>
      <button type="button" class="quiet" onClick={onDone}>
        Done
      </button>
    </div>
  )
}

/** Ticks all that is on show, or none of it. */
export function ChooseAll({ shownIds }: { shownIds: string[] }) {
  const isAll = shownIds.length > 0 && shownIds.every(id => chosen.value.has(id))
  return (
    <button
      type="button"
      class="quiet"
      aria-label={isAll ? 'Choose none of these' : 'Choose all of these'}
      onClick={() => choose(shownIds, !isAll)}
    >
      {isAll ? 'None' : 'All'}
    </button>
  )
}
