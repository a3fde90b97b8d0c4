// What there is, as tables for a spreadsheet. Loaded when it is opened.

import { useState } from 'preact/hooks'
import { gearCsv, packsCsv, shelfCsv } from '../../files/csv'
import { useSystem } from '../../parts/fields'
import { saveFile } from '../../parts/files'
import { openTrip, shelf } from '../../store'
import './csv.css'

export function SaveTable() {
  const system = useSystem()
  const [saved, setSaved] = useState<string | null>(null)
  const draft = openTrip.value?.draft
  const { things } = shelf.value
  const name = draft?.name ?? ''
  const tables = [
    {
      label: 'Save the gear',
      file: fileName(name, 'gear'),
      rows: draft?.gear.length ?? 0,
      csv: () => gearCsv(draft?.gear ?? [], { system }),
    },
    {
      label: 'Save the packs',
      file: fileName(name, 'packs'),
      rows: draft?.packs.length ?? 0,
      csv: () => packsCsv(draft?.packs ?? []),
    },
    {
      label: 'Save the shelf',
      file: 'shelf.csv',
      rows: things.length,
      csv: () => shelfCsv(things, { system }),
    },
  ].filter(({ rows }) => rows > 0)
  return (
    <section class="table-save" aria-label="Save as a table">
      <h3>Save as a table</h3>
      {tables.length === 0 ? <p>There is nothing to save yet: add an item first.</p> : null}
      <div class="actions">
        {tables.map(({ label, file, csv }) => (
          <button
            key={file}
            type="button"
            onClick={() => {
              saveFile(file, csv(), 'text/csv;charset=utf-8')
              setSaved(file)
            }}
          >
            {label}
          </button>
        ))}
      </div>
      <p role="status">{saved ? `${saved} is with your downloads.` : ''}</p>
      <p class="hint">
        Commas, decimal points, units in the headings: any spreadsheet opens it, and the gear comes back by
        “Import a table”. A word that begins like a formula gets a quote before it, so that it stays a word.
        What you typed that could not be read as a number is not in it.
      </p>
    </section>
  )
}

/** A file's name made of words that may hold what no file's name may. */
const fileName = (words: string, what: string): string =>
  `${[words.replace(/[^\p{L}\p{N} _-]/gu, '').trim(), what].filter(Boolean).join(' ')}.csv`
