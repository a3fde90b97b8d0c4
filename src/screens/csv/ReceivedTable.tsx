// A table that came in by a drop, a share or the system: the same door as for one that is chosen, with the file in it.

import { useEffect, useState } from 'preact/hooks'
import { emptyDraft } from '../../plan'
import { actions, openTrip } from '../../store'
import { ImportTable } from './ImportTable'
import { sourceOf, unreadable, useSource } from './source'

interface ReceivedTableProps {
  file: File
  /** Called when the file is done with, taken in or not. */
  onDone: () => void
}

export function ReceivedTable({ file, onDone }: ReceivedTableProps) {
  const trip = openTrip.value
  const [, keep] = useSource(trip?.id)
  const [problem, setProblem] = useState<string | null>(null)
  useEffect(() => {
    void sourceOf(file).then(source => {
      setProblem(source ? null : unreadable(file.name))
      keep({ source, asked: {} })
    })
    // The source is kept by trip: a new trip gets the file anew.
  }, [file, trip?.id])
  return (
    <>
      {problem ? <p class="problem">{problem}</p> : null}
      <ImportTable key={trip?.id} heading="h2" />
      <div class="actions">
        {trip ? null : (
          <button type="button" onClick={() => actions.createTrip(emptyDraft())}>
            Make a new trip for it
          </button>
        )}
        <button type="button" class="quiet" onClick={onDone}>
          Go on to the app
        </button>
      </div>
    </>
  )
}
