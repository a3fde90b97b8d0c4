// How things pack: the model's three shares, open to those who have measured theirs.

import { QuantityField } from '../../components/fields'
import { defaults, LIMITS } from '../../plan'
import { actions } from '../../store'

const SHARES = [
  ['rigidPacking', 'Rigid things fill of their space'],
  ['softPacking', 'Soft things fill of their space'],
  ['fillEfficiency', 'Soft things fill of the gaps'],
] as const

export function Packing() {
  return (
    <details class="more section">
      <summary>
        <h3>How it packs</h3>
      </summary>
      <p class="hint">
        Rigid pieces leave gaps, soft things fill part of them. The three shares are{' '}
        {defaults.DEFAULT_ORIGINS.packing}.
      </p>
      <div class="fields">
        {SHARES.map(([field, label]) => (
          <QuantityField
            key={field}
            path={`settings/${field}`}
            label={label}
            kind="share"
            limit={LIMITS.settings[field]}
            usual={defaults.SETTINGS[field]}
          />
        ))}
        <QuantityField
          path="settings/handSpread"
          label="Hands differ by"
          kind="share"
          limit={LIMITS.settings.handSpread}
          usual={defaults.SETTINGS.handSpread}
          hint={`One standard deviation: ${defaults.DEFAULT_ORIGINS.handSpread}.`}
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
