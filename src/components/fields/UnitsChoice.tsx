// Which units bare numbers are read in and everything is shown in; any other unit may be typed all the same.

import { actions, library } from '../../store'
import { Choice } from './Choice'

const SYSTEMS = [
  { value: 'metric', label: 'Metric' },
  { value: 'us', label: 'US customary' },
] as const

export function UnitsChoice() {
  return (
    <>
      <Choice label="Units" options={SYSTEMS} chosen={library.value.system} onChoose={actions.setSystem} />
      <p class="hint" data-figures="cited">
        You may type any unit anywhere: 2 lb 3 oz, 1,4 kg, 3000 cu in, 2.5 qt.
      </p>
    </>
  )
}
