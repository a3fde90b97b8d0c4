// The doors to what fills the gear many things at a time; each is fetched when it is opened, and keeps what is in it.

import { useState } from 'preact/hooks'
import { later } from '../../parts/frame'
import { openTrip } from '../../store'

const PasteList = later(async () => (await import('./PasteList')).PasteList)
const FoodMixer = later(async () => (await import('./FoodMixer')).FoodMixer)

const DOORS = [
  { id: 'paste', label: 'Paste a list' },
  { id: 'food', label: 'Mix a day’s food' },
] as const

export function ListDoors() {
  const [open, setOpen] = useState<'paste' | 'food' | null>(null)
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
      {open === 'paste' ? <PasteList key={trip} /> : null}
      {open === 'food' ? <FoodMixer key={trip} /> : null}
    </>
  )
}
