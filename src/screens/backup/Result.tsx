// After a backup was taken in: how much there is now, and the way back.

import { useState } from 'preact/hooks'
import { saveFile } from '../../components/files'
import { useStored } from '../../components/pieces'
import type { Contents } from '../../files/backup'
import { shelf, trips } from '../../store'
import type { TakenIn } from '../../store/lazy'
import { counted } from '../../units'

interface ResultProps {
  taken: TakenIn
  onDone: () => void
}

export function Result({ taken, onDone }: ResultProps) {
  const [back, setBack] = useState<'no' | 'going' | 'done'>('no')
  const isBack = back === 'done'
  const stored = useStored(isBack)
  const { problem, before } = taken
  async function putBack() {
    setBack('going')
    await taken.putBack()
    setBack('done')
  }
  async function save() {
    const { name, text } = await taken.beforeAsFile()
    saveFile(name, text)
  }
  const hadAny = before.trips.length + before.shelf.things.length > 0
  return (
    <>
      <div role="status">
        {stored === 'saving' || back === 'going' ? (
          <p class="lead">{back === 'no' ? 'Taking in…' : 'Putting back…'}</p>
        ) : (
          <p class="lead">
            {isBack ? 'Everything is as it was' : 'Now here'}
            {stored === 'saved' ? '' : ', but not saved'}: {counted(trips.value.size, 'trip')}, and{' '}
            {counted(shelf.value.things.length, 'item')} on the shelf.
          </p>
        )}
        {back !== 'no' || stored === 'saving' ? null : <p>{changeText(before)}</p>}
        {problem && hadAny && !isBack ? (
          <p class="problem">
            No snapshot was kept of what was here. {problem} Until this page is closed it can still be put
            back, or saved as a file.
          </p>
        ) : null}
      </div>
      <div class="actions">
        <button type="button" class="primary" onClick={onDone}>
          Go on
        </button>
        {isBack ? null : (
          <button type="button" class="quiet" disabled={back === 'going'} onClick={() => void putBack()}>
            Put back as it was
          </button>
        )}
        {problem && hadAny ? (
          <button type="button" class="quiet" onClick={() => void save()}>
            Save what was here as a file
          </button>
        ) : null}
      </div>
      {isBack || problem ? null : (
        <p class="hint">Later, what was here is among the snapshots, under More → “Backup”.</p>
      )}
    </>
  )
}

/** What became of the trips, in words. */
function changeText(before: Contents): string {
  const was = new Map(before.trips.map(trip => [trip.id, trip]))
  const now = trips.value
  const came = [...now.keys()].filter(id => !was.has(id)).length
  const gone = before.trips.filter(({ id }) => !now.has(id)).length
  const changed = before.trips.filter(({ id, draft }) => now.has(id) && now.get(id)?.draft !== draft).length
  const parts = [
    came ? `${counted(came, 'trip')} came` : '',
    changed ? `${counted(changed, 'trip')} changed` : '',
    gone ? `${counted(gone, 'trip')} went` : '',
  ].filter(Boolean)
  return parts.length > 0 ? `${parts.join(', ')}.` : 'No trip has changed.'
}
