// What the app itself has to say: that it cannot keep things, what it found at the start, that a newer version waits.

import { actions, applyUpdate, dueBackup, flush, saveState, storeProblem, updateWaiting } from '../../store'
import { useSteady } from './use-steady'

const NEWER = 'A newer version is ready. Your edits are kept.'

export function Notices() {
  const { unsaved, problem, newer, due } = useSteady({
    unsaved: saveState.value.message,
    problem: storeProblem.value,
    newer: updateWaiting.value && NEWER,
    due: dueBackup.value,
  })
  return (
    <div class="app-notices" aria-live="polite">
      {notice(unsaved, 'Try again', flush)}
      {notice(problem, 'Close', actions.dismissStoreProblem)}
      {notice(newer, 'Use it now', applyUpdate)}
      {due ? (
        <p class="hint">
          {due}{' '}
          <button type="button" class="quiet" onClick={() => void putOff()}>
            Not now
          </button>
        </p>
      ) : null}
    </div>
  )
}

function notice(text: string | false | null | undefined, action: string, act: () => unknown) {
  return text ? (
    <p class="caution notice">
      <strong>NOTICE</strong> {text}{' '}
      <button type="button" class="quiet" onClick={() => void act()}>
        {action}
      </button>
    </p>
  ) : null
}

/** Where it cannot be noted, the reminder comes again with the next start. */
const putOff = () =>
  import('../../store/lazy').then(({ backups }) => backups()?.putOff()).catch(() => undefined)
