// The empty app: one sentence that teaches, one tap to try it, and the ways back to what was kept before.

import { useState } from 'preact/hooks'
import { UnitsChoice } from '../../components/fields'
import { FileButton, receive } from '../../components/files'
import { emptyDraft } from '../../plan'
import { actions } from '../../store'
import { loadDemo } from './load'

export function Welcome({ onMore }: { onMore: () => void }) {
  const [failed, setFailed] = useState(false)
  return (
    <main class="welcome">
      <h1>Pack Reckoner</h1>
      <p class="lead">
        Tell it your trip and your gear: it works out the main-body litres and the load they ask for, and
        whether a pack is enough.
      </p>
      <div class="actions">
        <button type="button" class="primary" onClick={() => actions.createTrip(emptyDraft())}>
          Plan a trip
        </button>
        <button type="button" class="quiet" onClick={() => loadDemo().catch(() => setFailed(true))}>
          Look at a demo trip
        </button>
      </div>
      {failed ? <p class="problem">The demo could not be loaded: go online once and try again.</p> : null}
      <UnitsChoice />
      <div class="actions">
        <FileButton
          quiet
          label="Open a saved file"
          accept=".json,application/json"
          onFile={file => receive([file])}
        />
        <button type="button" class="quiet" onClick={onMore}>
          More: trips, shelf, backups
        </button>
      </div>
      <p class="hint">The demo is invented. Everything stays on this device and works without a network.</p>
    </main>
  )
}
