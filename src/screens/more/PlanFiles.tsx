// A trip as a plan file, and a plan file as a trip of its own: nothing that is here is ever replaced by one.

import { useState } from 'preact/hooks'
import { FileButton, fileWords, receive, saveFile } from '../../components/files'
import { fromPlanDocument } from '../../plan'
import { actions, newId, openTrip, reckoned } from '../../store'

export function PlanFiles() {
  const [problems, setProblems] = useState<string[]>([])
  const [saved, setSaved] = useState(false)

  async function open(file: File | undefined) {
    if (!file) return
    const { lookAtFile } = await import('../backup')
    const looked = await lookAtFile(file)
    setProblems(looked.kind === 'unread' ? looked.problems : [])
    if (looked.kind === 'plan') actions.createTrip(fromPlanDocument(looked.document, newId))
    // Not a plan: it goes to the reader it belongs to.
    else if (looked.kind !== 'unread') receive([file])
  }

  const failed = () =>
    setProblems(['The part of the app that opens files could not be loaded: reload the app and try again.'])

  function save() {
    // What is saved is what is reckoned: a file that this app and the command line both read.
    const text = JSON.stringify(reckoned.value?.document, null, 1)
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
          onFile={file => void open(file).catch(failed)}
        />
      </div>
      <div role="status">
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
