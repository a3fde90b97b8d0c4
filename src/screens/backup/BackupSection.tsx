// Backup, as a part of More: everything as one file, a file back, and the snapshots that lie on this device.

import './backup.css'
import { useEffect, useState } from 'preact/hooks'
import { FileButton, receive, saveFile } from '../../components/files'
import { momentText } from '../../components/pieces'
import { BACKUP_CAPS } from '../../files/backup'
import { backupsChanged, dueBackup } from '../../store'
import { Snapshots } from './Snapshots'
import { theBackups } from './the-backups'
import { sizeText } from './words'

export function BackupSection() {
  const [lastAt, setLastAt] = useState<number | null | 'unknown'>('unknown')
  const [problem, setProblem] = useState<string | null>(null)
  const [isBusy, setBusy] = useState(false)
  const changed = backupsChanged.value
  useEffect(() => {
    theBackups()
      .lastFile()
      .then(setLastAt, () => setLastAt('unknown'))
  }, [changed])

  async function save() {
    setBusy(true)
    const file = await theBackups()
      .file()
      .finally(() => setBusy(false))
    const { size } = file.text
    saveFile(file.name, file.text)
    setProblem(size > BACKUP_CAPS.fileBytes ? tooLarge(size) : null)
    // Without the note only the date is missing: the file itself is saved, whatever the storage does.
    theBackups()
      .noteSaved(file)
      .catch(() => setLastAt(Date.now()))
  }

  return (
    <section class="backup">
      <h2>Backup</h2>
      <p>One file with everything: all trips, the shelf and the settings. Keep it away from this device.</p>
      <p class="hint" role="status">
        {lastText(lastAt)}
        {dueBackup.value && typeof lastAt === 'number' ? ' There are changes since: save one soon.' : ''}
      </p>
      {problem ? <p class="problem">{problem}</p> : null}
      <div class="actions">
        <button type="button" class="quiet" disabled={isBusy} onClick={() => void save()}>
          Save everything as a file
        </button>
        <FileButton
          quiet
          label="Open a saved file"
          accept=".json,application/json"
          onFile={file => receive([file])}
        />
      </div>
      <Snapshots />
    </section>
  )
}

const lastText = (lastAt: number | null | 'unknown') => {
  if (lastAt === 'unknown') return 'When the last one was saved is not known.'
  return lastAt === null ? 'No file of everything has been saved yet.' : `Last saved ${momentText(lastAt)}.`
}

const tooLarge = (bytes: number) =>
  `The file has ${sizeText(bytes)}, and at most ${sizeText(BACKUP_CAPS.fileBytes)} are read back: remove trips you no longer need, or save them as plan files, and save the backup again.`
