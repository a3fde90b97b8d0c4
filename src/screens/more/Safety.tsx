// Keeping your trips: what the browser promises, the second copy, the last plan file, and the way out for a damaged
// record. Nothing here is asked of the browser but from a tap.

import { useEffect, useState } from 'preact/hooks'
import { momentText } from '../../components/pieces'
import { damagedRecords, openTrip, secondCopy, storeLoaded, trips, updateProblem } from '../../store'
import type { Facts, FileNote, StorageStatus } from '../../store/lazy'
import { counted } from '../../units'
import { DamagedRecords } from './DamagedRecords'

export function Safety() {
  const [storageStatus, setStorageStatus] = useState<StorageStatus | null>(null)
  const [facts, setFacts] = useState<Facts | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  const [refused, setRefused] = useState(false)

  const tell = (error: unknown) => setProblem(error instanceof Error ? error.message : String(error))
  const look = (with_: StorageStatus) => with_.facts().then(setFacts).catch(tell)
  useEffect(() => {
    import('../../store/lazy')
      .then(lazy => {
        const loaded = lazy.storageStatus()
        setStorageStatus(loaded)
        return loaded && look(loaded)
      })
      .catch(tell)
  }, [])

  async function ask() {
    if (!storageStatus) return
    setRefused(!(await storageStatus.askToKeep()))
    await look(storageStatus)
  }

  const canAsk = facts?.promised === false && storeLoaded.value && trips.value.size > 0
  return (
    <section class="safety">
      <h2>Keeping your trips</h2>
      <p>
        Trips are stored only in this browser. If its data is cleared or the device lost, only a backup brings
        them back.
      </p>
      <dl>
        <dt>Plan file of this trip</dt>
        <dd>{storageStatus && <LastFile storageStatus={storageStatus} />}</dd>
        <dt>Protected storage</dt>
        <dd>
          <span role="status">
            {facts && promiseText(facts.promised)}
            {refused
              ? ' It did not promise when asked. It may once you use the app more, or install it.'
              : ''}
          </span>
        </dd>
        <dt>Second copy</dt>
        <dd>{copyText(secondCopy.value)}</dd>
        <dt>Room used</dt>
        <dd>{facts && usedText(facts.usedBytes)}</dd>
      </dl>
      {canAsk ? (
        <div class="actions">
          <button type="button" class="quiet" onClick={() => void ask().catch(tell)}>
            Ask the browser to keep them
          </button>
        </div>
      ) : null}
      {updateProblem.value ? <p class="problem">{updateProblem.value}</p> : null}
      {problem ? (
        <p class="problem">This could not be looked up ({problem}): open this screen again.</p>
      ) : null}
      {storageStatus && damagedRecords.value.length > 0 ? (
        <DamagedRecords storageStatus={storageStatus} />
      ) : null}
    </section>
  )
}

function LastFile({ storageStatus }: { storageStatus: StorageStatus }) {
  const trip = openTrip.value
  const [note, setNote] = useState<FileNote | null | 'unknown'>('unknown')
  const id = trip?.id
  const noted = storageStatus.noted.value
  useEffect(() => {
    if (id) storageStatus.lastFile(id).then(setNote, () => setNote('unknown'))
  }, [id, storageStatus, noted])
  if (!trip) return <>No trip is open.</>
  if (note === 'unknown') return <>Not known: the storage of this browser cannot be read.</>
  if (!note) return <>None saved yet. When the list is worth keeping, save one: “Save this trip as a file”.</>
  const isBehind = trip.changedAt > note.changedAt
  return (
    <>
      Saved {momentText(note.at)}
      {isBehind ? '; the trip has changed since.' : ', and nothing has changed since.'}
    </>
  )
}

function promiseText(promised: Facts['promised']): string {
  if (promised === null) return 'This browser does not say whether it keeps them.'
  return promised
    ? 'Given: it does not clear them by itself when room is short.'
    : 'None: it may clear them when room is short or after a long pause.'
}

function copyText(copy: typeof secondCopy.value): string {
  switch (copy.kind) {
    case 'starting':
      return 'It is looked at in a moment.'
    case 'kept':
      return `${counted(copy.trips, 'trip')}, up to date ${momentText(copy.at)}. It lies beside the database, in case that is damaged.`
    case 'absent':
      return 'None: this browser has no place for it.'
    case 'newer':
      return 'Made by a newer version of Pack Reckoner and left alone: reload the app to update it.'
    case 'failed':
      return `Not up to date (${copy.why}): it is tried again with the next save.`
  }
}

const usedText = (bytes: number | null) =>
  bytes === null ? 'This browser does not say.' : `${(bytes / 1e6).toFixed(1)} MB, the app itself included.`
