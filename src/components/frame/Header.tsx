// The head of the page: which trip is open, whether it is kept, the way back, and the door to everything else.

import { tripName } from '../../plan'
import { openTrip, saveState } from '../../store'
import { UndoRedo } from './UndoRedo'

const SAVE_WORDS = {
  saved: 'Saved',
  saving: 'Saving…',
  'memory-only': 'Not kept',
  failed: 'Not saved',
} as const

export function Header({ onMore }: { onMore: () => void }) {
  const trip = openTrip.value
  return (
    <header class="head">
      <div class="head-title">
        <h1>
          <bdi>{tripName(trip?.draft ?? {})}</bdi>
        </h1>
        <p class="head-state">
          {trip?.demo ? <span>Invented demo. </span> : null}
          <span role="status">{SAVE_WORDS[saveState.value.kind]}</span>
        </p>
      </div>
      <div class="head-actions">
        <UndoRedo />
        <button type="button" class="quiet icon" aria-label="More" onClick={onMore}>
          ⋯
        </button>
      </div>
    </header>
  )
}
