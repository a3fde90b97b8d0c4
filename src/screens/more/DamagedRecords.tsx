// Records that cannot be read. They are left alone until the reader removes one, and that only after its text has been
// offered as a file: perhaps somebody can read what the app cannot.

import { useState } from 'preact/hooks'
import { saveFile } from '../../components/files'
import { damagedRecords } from '../../store'
import type { StorageStatus } from '../../store/lazy'

export function DamagedRecords({ storageStatus }: { storageStatus: StorageStatus }) {
  const [offered, setOffered] = useState<string[]>([])
  const [problem, setProblem] = useState<string | null>(null)
  const tell = (error: unknown) => setProblem(error instanceof Error ? error.message : String(error))

  async function offer(key: string) {
    saveFile(`damaged ${key.replace('/', ' ')}.json`, await storageStatus.damagedText(key))
    setOffered([...offered, key])
  }

  return (
    <>
      <h3>Damaged records</h3>
      <ul class="rows">
        {damagedRecords.value.map(({ key, what }) => (
          <li key={key}>
            <p>
              <bdi>{what}</bdi> cannot be read and is left alone.
            </p>
            <div class="actions">
              <button type="button" class="quiet" onClick={() => void offer(key).catch(tell)}>
                Save its text as a file
              </button>
              {offered.includes(key) ? (
                <button
                  type="button"
                  class="quiet"
                  onClick={() => void storageStatus.discardDamaged(key).catch(tell)}
                >
                  Remove the damaged record
                </button>
              ) : null}
            </div>
          </li>
        ))}
      </ul>
      {problem ? <p class="problem">That did not work ({problem}); the record is still there.</p> : null}
    </>
  )
}
