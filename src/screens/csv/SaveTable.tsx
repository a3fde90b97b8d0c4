// What there is, as tables for a spreadsheet. Loaded when it is opened.

import { useState } from 'preact/hooks'
import { Choice, useSystem } from '../../components/fields'
import { fileWords, saveFile } from '../../components/files'
import { gearCsv, type Marks, packsCsv, shelfCsv } from '../../files/csv'
import { edited, shelf } from '../../store'
import './csv.css'

const MARKS = [
  { value: 'commas', label: 'Commas and decimal points' },
  { value: 'semicolons', label: 'Semicolons and decimal commas' },
] as const

/** A spreadsheet set to the language of the device writes its numbers so. */
const usualMarks = (): Marks => ((1.5).toLocaleString().includes(',') ? 'semicolons' : 'commas')

export function SaveTable() {
  const system = useSystem()
  const [marks, setMarks] = useState(usualMarks)
  const [saved, setSaved] = useState<string | null>(null)
  const { draft } = edited.value
  const { things } = shelf.value
  const name = draft.name ?? ''
  const tables = [
    {
      label: 'Save the gear',
      file: fileName(name, 'gear'),
      rows: draft.gear.length,
      csv: () => gearCsv(draft.gear, { system, marks }),
    },
    {
      label: 'Save the packs',
      file: fileName(name, 'packs'),
      rows: draft.packs.length,
      csv: () => packsCsv(draft.packs, marks),
    },
    {
      label: 'Save the shelf',
      file: 'shelf.csv',
      rows: things.length,
      csv: () => shelfCsv(things, { system, marks }),
    },
  ].filter(({ rows }) => rows > 0)
  return (
    <section class="table-save" aria-label="Save as a table">
      <h3>Save as a table</h3>
      {tables.length === 0 ? <p>There is nothing to save yet: add an item first.</p> : null}
      <Choice label="Written with" options={MARKS} chosen={marks} onChoose={setMarks} />
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
        Choose the decimal mark that your spreadsheet uses. Units are in the headings, and the gear comes back
        by “Import a table” either way. A word that begins like a formula gets a quote before it, so that it
        stays a word. What you typed that could not be read as a number is not in it.
      </p>
    </section>
  )
}

/** A file's name made of words that may hold what no file's name may. */
const fileName = (words: string, what: string): string =>
  `${[fileWords(words), what].filter(Boolean).join(' ')}.csv`
