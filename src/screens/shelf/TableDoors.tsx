// The doors from the shelf to a spreadsheet and back; each is fetched when it is opened.

import { useState } from 'preact/hooks'
import { later } from '../../parts/frame'

const ImportTable = later(async () => (await import('../csv')).ImportTable)
const SaveTable = later(async () => (await import('../csv')).SaveTable)

const DOORS = [
  { id: 'table', label: 'Import a table' },
  { id: 'save', label: 'Save as a table' },
] as const

export function TableDoors() {
  const [open, setOpen] = useState<(typeof DOORS)[number]['id'] | null>(null)
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
      {open === 'table' ? <ImportTable to="shelf" /> : null}
      {open === 'save' ? <SaveTable /> : null}
    </>
  )
}
