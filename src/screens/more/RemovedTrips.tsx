// The trips that were deleted last: each can be brought back, or erased for good.

import { useState } from 'preact/hooks'
import { momentText } from '../../components/pieces'
import { tripName } from '../../plan'
import { actions, removedTrips } from '../../store'
import { counted } from '../../units'
import { NOT_LOADED } from './erasing'

/** Kept for a while: the last ten, also after a reload. */
export function RemovedTrips() {
  const removed = removedTrips.value
  const [asked, setAsked] = useState<string | null>(null)
  const [state, setState] = useState<Erasure>({ kind: 'none' })

  async function erase(id: string, name: string) {
    setAsked(null)
    setState({ kind: 'busy' })
    try {
      const left = await (await import('../../store/lazy')).erasing()?.trip(id)
      setState(left ? { kind: 'left', id, name, why: left } : { kind: 'done', name })
    } catch {
      setState({ kind: 'left', id, name, why: NOT_LOADED })
    }
  }

  return (
    <>
      <div role="status">
        <Outcome state={state} again={(id, name) => void erase(id, name)} />
      </div>
      {removed.length > 0 ? (
        <details class="removed-trips">
          <summary>{counted(removed.length, 'deleted trip')} can be brought back</summary>
          <p class="hint">The last ten are kept; older ones are let go.</p>
          <ul class="rows">
            {removed.map(({ trip, at }) => {
              const name = tripName(trip.draft)
              return (
                <li key={trip.id} class="row">
                  <div class="summary">
                    <bdi class="name">{name}</bdi>
                    <span class="facts-line">
                      {counted(trip.draft.gear.length, 'item')}, deleted {momentText(at)}
                    </span>
                  </div>
                  <div class="actions">
                    <button
                      type="button"
                      class="quiet"
                      aria-label={`Bring back trip ${name}`}
                      onClick={() => actions.restoreTrip(trip.id)}
                    >
                      Bring back
                    </button>
                    <button
                      type="button"
                      class="quiet"
                      aria-label={`Erase for good trip ${name}`}
                      aria-expanded={asked === trip.id}
                      onClick={() => setAsked(asked === trip.id ? null : trip.id)}
                    >
                      Erase for good
                    </button>
                  </div>
                  {asked === trip.id ? (
                    <Question
                      name={name}
                      onYes={() => void erase(trip.id, name)}
                      onNo={() => setAsked(null)}
                    />
                  ) : null}
                </li>
              )
            })}
          </ul>
        </details>
      ) : null}
    </>
  )
}

type Erasure =
  | { kind: 'none' }
  | { kind: 'busy' }
  | { kind: 'done'; name: string }
  | { kind: 'left'; id: string; name: string; why: string }

function Question({ name, onYes, onNo }: { name: string; onYes: () => void; onNo: () => void }) {
  return (
    <div class="question">
      <p>
        Erase “<bdi>{name}</bdi>” for good? Nothing brings it back after that. It goes from undo, other open
        tabs, the second copy and every snapshot. A snapshot that cannot be read is removed.
      </p>
      <p class="hint">
        Files and links that you saved or gave away are beyond reach. What you put on the shelf from this trip
        stays there, its packings too.
      </p>
      <div class="actions">
        <button type="button" class="quiet" onClick={onYes}>
          Yes, erase it
        </button>
        <button type="button" class="quiet" onClick={onNo}>
          No, keep it
        </button>
      </div>
    </div>
  )
}

function Outcome({ state, again }: { state: Erasure; again: (id: string, name: string) => void }) {
  if (state.kind === 'none') return null
  if (state.kind === 'busy') return <p>Erasing…</p>
  if (state.kind === 'done')
    return (
      <p>
        “<bdi>{state.name}</bdi>” is erased from this device. What you put on the shelf from it stays.
      </p>
    )
  return (
    <>
      <p class="problem">{state.why}</p>
      <div class="actions">
        <button type="button" class="quiet" onClick={() => again(state.id, state.name)}>
          Try again
        </button>
      </div>
    </>
  )
}
