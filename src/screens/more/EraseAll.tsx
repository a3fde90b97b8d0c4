// Erasing everything on this device, confirmed by typing a word.

import { useState } from 'preact/hooks'
import { NOT_LOADED } from './erasing'

const WORD = 'erase'

export function EraseAll() {
  const [isOpen, setOpen] = useState(false)
  const [typed, setTyped] = useState('')
  const [isBusy, setBusy] = useState(false)
  const [problem, setProblem] = useState<string | null>(null)

  async function erase() {
    if (typed.trim().toLowerCase() !== WORD) {
      setProblem(`Nothing is erased yet: type the word “${WORD}” in the field first.`)
      return
    }
    setBusy(true)
    setProblem(null)
    try {
      setProblem((await (await import('../../store/lazy')).erasing()?.everything()) ?? null)
    } catch {
      setProblem(NOT_LOADED)
    }
    setBusy(false)
  }

  return (
    <section class="erase-all">
      <h2>Erase everything</h2>
      <p>Before you give this device away, or to leave nothing in this browser.</p>
      <div class="actions">
        <button type="button" class="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          Erase everything on this device
        </button>
      </div>
      {isOpen ? (
        <>
          <p>
            This erases all trips, the shelf, undo steps, deleted trips and settings. It erases the second
            copy, all snapshots and what other apps have shared. All open tabs are emptied. Nothing brings
            them back. The app itself stays.
          </p>
          <p class="hint">
            Files and links that you saved or gave away are beyond reach: delete those yourself. Save a file
            of everything first if you may want it again (“Backup”, above).
          </p>
          <label class="field">
            Type “{WORD}” to confirm
            <input
              type="text"
              autocomplete="off"
              autocapitalize="off"
              spellcheck={false}
              value={typed}
              onInput={event => setTyped(event.currentTarget.value)}
            />
          </label>
          <div class="actions">
            <button type="button" class="quiet" onClick={() => void erase()}>
              Erase everything now
            </button>
          </div>
        </>
      ) : null}
      <div role="status">
        {isBusy ? <p>Erasing…</p> : null}
        {problem ? <p class="problem">{problem}</p> : null}
      </div>
    </section>
  )
}
