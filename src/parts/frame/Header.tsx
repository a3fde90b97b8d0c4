// The head of the page: which trip is open, whether it is kept, the way back, and the door to everything else.

import { actions, canRedo, canUndo, lastLabel, openTrip, saveState } from '../../store'

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
          <bdi>{trip?.draft.name || 'Trip without a name'}</bdi>
        </h1>
        <p class="head-state">
          {trip?.demo ? <span>Invented demo. </span> : null}
          <span role="status">{SAVE_WORDS[saveState.value.kind]}</span>
        </p>
      </div>
      <div class="head-actions">
        <button
          type="button"
          class="quiet icon"
          aria-label={lastLabel.value ? `Undo: ${lastLabel.value}` : 'Undo'}
          disabled={!canUndo.value}
          onClick={() => actions.undo()}
        >
          ↶
        </button>
        <button
          type="button"
          class="quiet icon"
          aria-label="Redo"
          disabled={!canRedo.value}
          onClick={() => actions.redo()}
        >
          ↷
        </button>
        <button type="button" class="quiet" onClick={onMore}>
          More
        </button>
      </div>
    </header>
  )
}
