// Which units bare numbers are read in and everything is shown in; any other unit may be typed all the same.

import { actions, library } from '../../store'

export function UnitsChoice() {
  const { system } = library.value
  return (
    <>
      <fieldset class="field wide choice">
        <legend>Units</legend>
        <div class="options">
          {(['metric', 'us'] as const).map(choice => (
            <label key={choice} class="option">
              <input
                type="radio"
                name="system"
                checked={system === choice}
                onChange={() => actions.setSystem(choice)}
              />
              <span>{choice === 'metric' ? 'Metric' : 'US customary'}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p class="hint">You may type any unit anywhere: 2 lb 3 oz, 1,4 kg, 3000 cu in, 2.5 qt.</p>
    </>
  )
}
