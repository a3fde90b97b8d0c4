// A trip as a plan file, and a plan file as a trip of its own: nothing that is here is ever replaced by one.

import { useEffect, useRef, useState } from 'preact/hooks'
import { FileButton, fileWords, receive, saveFile } from '../../components/files'
import { fromPlanDocument } from '../../plan'
import { actions, newId, openTrip } from '../../store'
import { lookInWorker } from '../../store/look'
import { usePlanWithPacks } from '../share'

export function PlanFiles() {
  const [problems, setProblems] = useState<string[]>([])
  const [isReading, setReading] = useState(false)
  const [saved, setSaved] = useState(false)
  const plan = usePlanWithPacks()

  const reading = useRef<AbortController | null>(null)
  useEffect(() => () => reading.current?.abort(), [])

  /** The file chosen last is the one that is opened. */
  async function open(file: File) {
    reading.current?.abort()
    reading.current = new AbortController()
    const { signal } = reading.current
    setProblems([])
    setReading(true)
    const looked = await lookInWorker(file, { signal })
    if (signal.aborted) return
    setReading(false)
    setProblems(looked.kind === 'unread' ? looked.problems : [])
    if (looked.kind === 'plan') actions.createTrip(fromPlanDocument(looked.document, newId))
    // Not a plan: it goes to the reader it belongs to.
    else if (looked.kind !== 'unread') receive([file])
  }

  function save() {
    // What is saved is what is reckoned: a file that this app and the command line both read.
    const text = JSON.stringify(plan?.document, null, 1)
    const name = fileWords(openTrip.value?.draft.name ?? '') || 'trip'
    saveFile(`${name}.json`, text)
    setSaved(true)
    // Without the note only the date is missing: the file itself is saved, whatever the storage does.
    const note = async () =>
      (await import('../../store/lazy')).storageStatus()?.noteFile(openTrip.value?.id ?? '')
    note().catch(() => {})
  }

  return (
    <section>
      <h2>Plan files</h2>
      {plan?.choice}
      <div class="actions">
        {openTrip.value ? (
          <button type="button" class="quiet" onClick={save}>
            Save this trip as a file
          </button>
        ) : null}
        <FileButton
          quiet
          label="Open a plan file"
          accept=".json,application/json"
          onFile={file => void open(file)}
        />
      </div>
      <div role="status">
        {isReading ? <p class="hint">Reading…</p> : null}
        {saved ? <p class="hint">The file is with your downloads.</p> : null}
        {problems.length ? (
          <>
            <p class="problem">The file was not opened; nothing here has changed.</p>
            <ul class="problem">
              {problems.slice(0, 10).map(problem => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
          </>
        ) : null}
      </div>
    </section>
  )
}
