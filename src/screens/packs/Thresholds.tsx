// The hiker's own thresholds: by these, not by ours, a pack is judged.

import { Field } from '../../components/fields'
import { OwnFigures } from './OwnFigures'

export function Thresholds() {
  return (
    <details class="more section">
      <summary>
        <h3>Your thresholds</h3>
      </summary>
      <div class="fields">
        <Field path="settings/framelessCeilingKg" />
        <Field path="settings/roomyRatio" />
        <Field path="settings/linerKg" />
        <Field path="settings/brimKgPerLitre" />
        <Field path="settings/lightGramsPerLitre" />
        <Field path="settings/headroomLitres" />
      </div>
      <OwnFigures />
    </details>
  )
}
