// The empty app: one sentence that teaches and one tap to try it.

import { useState } from 'preact/hooks'
import { UnitsChoice } from '../../parts/fields'
import { emptyDraft } from '../../plan'
import { actions } from '../../store'
import { loadDemo } from './load'

export function Welcome() {
  const [failed, setFailed] = useState(false)
  return (
    <main class="welcome">
      <h1>Pack Reckoner</h1>
      <p class="lead">
        Tell it your trip and your gear: it works out the main-body litres and the load they ask for, and
        whether a pack does.
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
      <p class="hint">The demo is invented. Everything stays on this device and works without a network.</p>
    </main>
  )
}
