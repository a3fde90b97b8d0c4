// The hiker's own thresholds: by these, not by ours, a pack is judged.

import { QuantityField } from '../../components/fields'
import { defaults, LIMITS } from '../../plan'

export function Thresholds() {
  const { settings } = LIMITS
  return (
    <details class="more section">
      <summary>
        <h3>Your thresholds</h3>
      </summary>
      <div class="fields">
        <QuantityField
          path="settings/framelessCeilingKg"
          label="Most without a frame"
          kind="mass"
          limit={settings.framelessCeilingKg}
          usual={defaults.SETTINGS.framelessCeilingKg}
          usualFrom={defaults.DEFAULT_ORIGINS.framelessCeilingKg}
        />
        <QuantityField
          path="settings/roomyRatio"
          label="More pack than needed from, times the need"
          kind="number"
          limit={settings.roomyRatio}
          usual={defaults.SETTINGS.roomyRatio}
          usualFrom={defaults.DEFAULT_ORIGINS.roomyRatio}
        />
        <QuantityField
          path="settings/linerKg"
          label="Liner in a pack that is not sealed"
          kind="mass"
          fine
          limit={settings.linerKg}
          usual={defaults.SETTINGS.linerKg}
          usualFrom={defaults.DEFAULT_ORIGINS.linerKg}
        />
        <QuantityField
          path="settings/lightGramsPerLitre"
          label="Light for me, up to"
          kind="gramsPerLitre"
          limit={settings.lightGramsPerLitre}
          hint="Pack mass for each litre. Empty: not judged."
        />
        <QuantityField
          path="settings/headroomLitres"
          label="Headroom I want"
          kind="volume"
          limit={settings.headroomLitres}
          hint="Room to spare over the likely need. Empty: not judged."
        />
      </div>
    </details>
  )
}
