// More: the trips kept on this device, units and theme, plan files, and what this app is and is not.

import { Choice, UnitsChoice } from '../../components/fields'
import { toTop, UndoRedo } from '../../components/frame'
import { GENERAL_LINE } from '../../report'
import { actions, library, offlineReady, openTrip } from '../../store'
import { BackupSection } from '../backup'
import { SharePlan } from '../share'
import { EraseAll } from './EraseAll'
import { PlanFiles } from './PlanFiles'
import { Safety } from './Safety'
import { ShelfDoor } from './ShelfDoor'
import { Trips } from './Trips'

/** What grows as the storage answers stands last, so that no button moves from under a thumb. */
export function MoreScreen({ onClose, onSheet }: { onClose: () => void; onSheet: () => void }) {
  return (
    <div class="screen more-screen">
      <div class="heading">
        <h1>Trips and settings</h1>
        <div class="head-actions">
          <UndoRedo />
          <button type="button" class="quiet" onClick={onClose}>
            Back
          </button>
        </div>
      </div>
      <div class="actions">
        <button type="button" class="quiet" onClick={() => toTop('help')}>
          How it works
        </button>
      </div>
      <Trips onClose={onClose} />
      <ShelfDoor />
      <PlanFiles />
      {openTrip.value ? (
        <section>
          <h2>On paper</h2>
          <p>The answer, days, packs and a packing list to tick, in black and white.</p>
          <div class="actions">
            <button type="button" class="quiet" onClick={onSheet}>
              Print a sheet
            </button>
          </div>
        </section>
      ) : null}
      <Settings />
      {openTrip.value ? <SharePlan /> : null}
      <BackupSection />
      <Safety />
      <EraseAll />
      <section>
        <h2>About</h2>
        <p>
          Pack Reckoner calculates your trip’s litres and load, and judges packs by them.{' '}
          {offlineReady.value
            ? 'It is ready to work without a network.'
            : 'It works without a network once loaded.'}
        </p>
        <p class="hint">{GENERAL_LINE}</p>
      </section>
    </div>
  )
}

const THEMES = [
  { value: 'auto', label: 'As the device' },
  { value: 'light', label: 'Day' },
  { value: 'dark', label: 'Dark' },
] as const

function Settings() {
  const { theme, brightSun = false, largeTargets = false } = library.value
  return (
    <section>
      <h2>Units and daylight</h2>
      <UnitsChoice />
      <Choice label="Day or dark" options={THEMES} chosen={theme} onChoose={actions.setTheme} />
      <Switch
        label="Bright sun: black on white, larger small print"
        isOn={brightSun}
        onSwitch={actions.setBrightSun}
      />
      <Switch
        label="Large targets, for gloves and rain"
        isOn={largeTargets}
        onSwitch={actions.setLargeTargets}
      />
    </section>
  )
}

interface SwitchProps {
  label: string
  isOn: boolean
  onSwitch: (isOn: boolean) => void
}

function Switch({ label, isOn, onSwitch }: SwitchProps) {
  return (
    <label class="toggle">
      <input type="checkbox" checked={isOn} onChange={event => onSwitch(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  )
}
