// Where a table comes from: a file that is chosen or dropped here, or rows pasted from a spreadsheet.

import { useState } from 'preact/hooks'
import { FileButton } from '../../components/files'
import { TABLE_CAPS } from '../../files/csv'
import { countText } from '../../units'
import { type Source, sourceOf, unreadable } from './source'

interface TableSourceProps {
  source: Source | null
  onSource: (source: Source | null) => void
}

export function TableSource({ source, onSource }: TableSourceProps) {
  const [problem, setProblem] = useState<string | null>(null)
  const [over, setOver] = useState(false)

  async function open(file: File | undefined) {
    if (!file) return
    const read = await sourceOf(file)
    setProblem(read ? null : unreadable(file.name))
    if (read) onSource(read)
  }

  return (
    <fieldset
      class={over ? 'drop over' : 'drop'}
      onDragOver={event => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={event => {
        // A file dropped elsewhere is looked at first; here it is known what it is for.
        event.preventDefault()
        event.stopPropagation()
        setOver(false)
        void open(event.dataTransfer?.files[0])
      }}
    >
      <legend>The table</legend>
      <FileButton
        label={source && 'name' in source ? 'Choose another file' : 'Choose a file (CSV)'}
        accept=".csv,.tsv,.tab,.txt,text/csv,text/tab-separated-values,text/plain"
        onFile={file => void open(file)}
      />
      {problem ? <p class="problem">{problem}</p> : null}
      {source && 'name' in source ? (
        <p>
          <bdi class="name">{source.name}</bdi>{' '}
          <button type="button" class="link" onClick={() => onSource(null)}>
            Put it away
          </button>
        </p>
      ) : (
        <div class="field">
          <label for="table-text">Or paste rows from a spreadsheet</label>
          <textarea
            id="table-text"
            rows={4}
            autocomplete="off"
            spellcheck={false}
            wrap="off"
            aria-describedby="table-hint"
            value={source && 'text' in source ? source.text : ''}
            onInput={event => {
              const { value } = event.currentTarget
              onSource(value === '' ? null : { text: value })
            }}
          />
          <p id="table-hint" class="hint">
            With the row that names the columns, if there is one. Up to {countText(TABLE_CAPS.rows)} rows and{' '}
            {TABLE_CAPS.bytes / 1e6} MB; it is read on this device and sent nowhere.
          </p>
        </div>
      )}
    </fieldset>
  )
}
