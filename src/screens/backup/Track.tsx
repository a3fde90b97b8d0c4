// A track from outside: the stops of the open trip, or of a new one, which is made only once there are stops for it.

import { useState } from 'preact/hooks'
import { actions, loadEngine, openTrip } from '../../store'
import { FromTrack } from '../trip'
import type { OpenerProps } from './types'

export function Track({ file, onDone }: OpenerProps) {
  const [chosen, setChosen] = useState<'open' | 'new' | null>(null)
  // Reading needs the engine's paces; where it cannot be had, the screens that follow say so.
  const choose = (trip: 'open' | 'new') => {
    const go = () => setChosen(trip)
    void loadEngine().then(go, go)
  }
  const open = openTrip.value
  const taken = () => {
    actions.setPlace({ screen: 'trip', detail: null, scrollY: 0 })
    onDone()
  }
  if (chosen) return <FromTrack file={file} isNew={chosen === 'new'} onTaken={taken} onLeft={onDone} />
  return (
    <>
      <p class="lead">
        <bdi>{file.name}</bdi> holds a track, from which stops can be made.
      </p>
      <div class="actions">
        {open ? (
          <button type="button" class="primary" onClick={() => choose('open')}>
            For the open trip <bdi>{open.draft.name || 'without a name'}</bdi>
          </button>
        ) : null}
        <button type="button" class={open ? 'quiet' : 'primary'} onClick={() => choose('new')}>
          For a new trip
        </button>
        <button type="button" class="quiet" onClick={onDone}>
          Leave it
        </button>
      </div>
    </>
  )
}
