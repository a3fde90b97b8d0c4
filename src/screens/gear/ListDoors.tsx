// The doors to what fills the gear many things at a time; each is fetched when it is opened, and keeps what is in it.

import { useState } from 'preact/hooks'
import { later } from '../../parts/frame'
import { openTrip } from '../../store'

const PasteList = later(async () => (await import('./PasteList')).PasteList)
const ImportTable = later(async () => (await import('../csv')).ImportTable)
const SaveTable = later(async () => (await import('../csv')).SaveTable)
const FoodMixer = later(async () => (await import('./FoodMixer')).FoodMixer)

const DOORS = [
  { id: 'paste', label: 'Paste a list' },
  { id: 'table', label: 'Import a table' },
  { id: 'food', label: 'Mix a day’s food' },
  { id: 'save', label: 'Save as a table' },
] as const
type Door = (typeof DOORS)[number]['id']

export function ListDoors() {
  const [open, setOpen] = useState<Door | null>(null)
  const trip = openTrip.value?.id
  return (
    <>
      <div class="actions">
        {DOORS.map(({ id, label }) => (
          <button
            key={id}
            type="button"
            aria-expanded={open === id}
            onClick={() => setOpen(open === id ? null : id)}
          >
            {label}
          </button>
        ))}
      </div>
      {open === 'paste' ? <PasteList key={trip} onTable={() => setOpen('table')} /> : null}
      {open === 'table' ? <ImportTable key={trip} onList={() => setOpen('paste')} /> : null}
      {open === 'food' ? <FoodMixer key={trip} /> : null}
      {open === 'save' ? <SaveTable key={trip} /> : null}
    </>
  )
}
