// How things pack: the model's three shares, open to those who have measured theirs.

import { Field } from '../../components/fields'
import { FIELDS } from '../../plan'
import { actions } from '../../store'

const SHARES = ['rigidPacking', 'softPacking', 'fillEfficiency'] as const

export function Packing() {
  return (
    <details class="more section">
      <summary>
        <h3>How it packs</h3>
      </summary>
      <p class="hint">
        Rigid pieces leave gaps, soft items fill part of them. The three shares are{' '}
        {FIELDS.settings.rigidPacking.origin}.
      </p>
      <div class="fields">
        {SHARES.map(field => (
          <Field key={field} path={`settings/${field}`} usualFrom="" />
        ))}
        <Field
          path="settings/handSpread"
          usualFrom=""
          hint={`One standard deviation: ${FIELDS.settings.handSpread.origin}.`}
        />
      </div>
      <button
        type="button"
        class="link"
        onClick={() => actions.setPlace({ screen: 'calibrate', detail: null, scrollY: 0 })}
      >
        Learn it from my own packing instead
      </button>
    </details>
  )
}
