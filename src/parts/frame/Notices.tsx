// What the app itself has to say: that it cannot keep things, that a newer version waits.

import { applyUpdate, saveState, storeProblem, updateWaiting } from '../../store'

export function Notices() {
  const problem = storeProblem.value ?? saveState.value.message
  return (
    <div class="app-notices" aria-live="polite">
      {problem ? (
        <p class="caution notice">
          <strong>NOTICE</strong> {problem}
        </p>
      ) : null}
      {updateWaiting.value ? (
        <p class="caution notice">
          A newer version is ready. Your edits are kept.{' '}
          <button type="button" class="quiet" onClick={() => void applyUpdate()}>
            Use it now
          </button>
        </p>
      ) : null}
    </div>
  )
}
