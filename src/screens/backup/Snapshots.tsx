// The snapshots on this device: each can be looked at and taken in like a backup file, saved as one, or removed.

import { useEffect, useState } from 'preact/hooks'
import { receive, saveFile } from '../../components/files'
import { momentText } from '../../components/pieces'
import { backupsChanged, snapshotProblem } from '../../store'
import { type Snapshot, snapshotText } from '../../store/lazy'
import { counted } from '../../units'
import { theBackups } from './the-backups'
import { SNAPSHOT_TYPE } from './types'
import { sizeText } from './words'

export function Snapshots() {
  const [list, setList] = useState<Snapshot[] | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  const [removed, setRemoved] = useState<{ name: string; file: Blob } | null>(null)
  const { snapshots } = theBackups()
  const tell = (error: unknown) => setProblem(snapshotText(error))
  const load = () => snapshots.list().then(setList, tell)
  const changed = backupsChanged.value
  useEffect(() => void load(), [changed])

  const act = (work: () => Promise<unknown>) => {
    setProblem(null)
    void work().then(load).catch(tell)
  }
  const remove = (name: string) =>
    act(async () => {
      const file = await snapshots.raw(name).catch(nullIfUnreadable)
      await snapshots.remove(name)
      setRemoved(file && { name, file })
    })

  return (
    <>
      <h3>Snapshots on this device</h3>
      <p class="hint">
        One a day is kept by itself once something has changed, and one before a backup is taken in: the last
        ten. They go when the site’s data is cleared.
      </p>
      <div role="status">
        {(problem ?? snapshotProblem.value) ? (
          <p class="problem">{problem ?? snapshotProblem.value}</p>
        ) : null}
        {removed ? (
          <p>
            Snapshot removed.{' '}
            <button
              type="button"
              class="quiet"
              onClick={() =>
                act(async () => {
                  await snapshots.keep(removed.name, removed.file)
                  setRemoved(null)
                })
              }
            >
              Bring it in again
            </button>
          </p>
        ) : null}
      </div>
      {list?.length === 0 ? <p class="hint">None yet.</p> : null}
      <ul class="rows">
        {list?.map(snapshot => (
          <li key={snapshot.name} class="row">
            <Line snapshot={snapshot} />
            <div class="actions">
              {snapshot.head ? (
                <Ways snapshot={snapshot} head={snapshot.head} act={act} />
              ) : (
                <button type="button" class="quiet" onClick={() => act(() => saveRaw(snapshot.name))}>
                  Save it as it is
                </button>
              )}
              <button
                type="button"
                class="quiet"
                aria-label={`Remove the snapshot of ${nameOf(snapshot)}`}
                onClick={() => remove(snapshot.name)}
              >
                Remove
              </button>
            </div>
          </li>
        ))}
      </ul>
    </>
  )
}

const nameOf = ({ head, name }: Snapshot) => (head ? momentText(head.at) : name)

function Line({ snapshot }: { snapshot: Snapshot }) {
  const { head, state, bytes } = snapshot
  if (!head)
    return (
      <p>
        {state === 'newer'
          ? 'A snapshot of a newer version of Pack Reckoner: reload the app to update it.'
          : 'A damaged snapshot, which is left alone.'}{' '}
        {bytes > 0 ? <span class="facts-line">{sizeText(bytes)}</span> : null}
      </p>
    )
  return (
    <p>
      <span class="name">{momentText(head.at)}</span>{' '}
      <span class="facts-line">
        {counted(head.trips, 'trip')}, {counted(head.things, 'item')}, {sizeText(bytes)}
        {reasonText(head)}
      </span>
    </p>
  )
}

function reasonText({ reason, back }: NonNullable<Snapshot['head']>): string {
  if (reason === 'day') return ''
  return back ? ', before a backup was taken out again' : ', before a backup was taken in'
}

/** Of a file that cannot be read nothing is left to bring in again: it can be removed all the same. */
function nullIfUnreadable(error: unknown): null {
  if (error instanceof DOMException && error.name === 'NotReadableError') return null
  throw error
}

interface WaysProps {
  snapshot: Snapshot
  head: NonNullable<Snapshot['head']>
  act: (work: () => Promise<unknown>) => void
}

function Ways({ snapshot, head, act }: WaysProps) {
  const when = momentText(head.at)
  const text = () => theBackups().snapshots.text(snapshot.name)
  return (
    <>
      <button
        type="button"
        class="quiet"
        aria-label={`Look at it: the snapshot of ${when}`}
        onClick={() =>
          act(async () =>
            receive([new File([await text()], `the snapshot of ${when}`, { type: SNAPSHOT_TYPE })]),
          )
        }
      >
        Look at it
      </button>
      <button
        type="button"
        class="quiet"
        aria-label={`Save as a file: the snapshot of ${when}`}
        onClick={() => act(async () => saveFile(`pack-reckoner-${head.day}-snapshot.json`, await text()))}
      >
        Save as a file
      </button>
    </>
  )
}

async function saveRaw(name: string): Promise<void> {
  const file = await theBackups().snapshots.raw(name)
  if (file) saveFile(name, file)
}
