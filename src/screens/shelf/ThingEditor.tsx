// Everything about one thing: the facts an item has, and what only the shelf knows of it.

import { useId } from 'preact/hooks'
import { EditedFields } from '../../components/fields'
import { packThings, setRetired, setThing, type Thing, type ThingChange } from '../../plan/shelf'
import { actions, newId, openTrip } from '../../store'
import { HomeOfItems, ItemEditor } from '../gear'
import { editedThings, homeOfThings } from './thing-home'
import { nameOf } from './thing-words'

const NOTE_LENGTH = 1000

export function ThingEditor({ thing, isInTrip }: { thing: Thing; isInTrip: boolean }) {
  const name = nameOf(thing)
  const trip = openTrip.value
  const set = (what: string, change: ThingChange) =>
    actions.editShelf(
      `${name}, ${what} (on the shelf)`,
      shelf => setThing(shelf, thing.id, change, Date.now()),
      `${thing.id}/${what}`,
    )
  const pack = () =>
    actions.edit(`Pack ${name}`, draft => packThings(draft, [thing], { newId, now: Date.now() }))
  return (
    <EditedFields value={editedThings}>
      <HomeOfItems value={homeOfThings}>
        {trip && !thing.retired ? (
          <div class="actions">
            <button type="button" class={isInTrip ? 'quiet' : ''} onClick={pack}>
              {isInTrip ? 'Pack one more' : 'Pack into this trip'}
            </button>
          </div>
        ) : null}
        <ItemEditor item={{ ...thing.item, id: thing.id }} />
        <Note thing={thing} onNote={note => set('note', { note: note || undefined })} />
        <Weighed thing={thing} onDay={day => set('day weighed', { weighedOn: day || undefined })} />
        <div class="field wide">
          <label class="toggle">
            <input
              type="checkbox"
              checked={thing.retired ?? false}
              onChange={event => retire([thing.id], event.currentTarget.checked, name)}
            />
            <span>Retired: kept here, but no longer packed</span>
          </label>
        </div>
      </HomeOfItems>
    </EditedFields>
  )
}

/** Retires things, or takes them back. */
export function retire(ids: Iterable<string>, retired: boolean, what: string) {
  actions.editShelf(`${retired ? 'Retire' : 'Use again'} ${what}`, shelf => setRetired(shelf, ids, retired))
}

function Note({ thing, onNote }: { thing: Thing; onNote: (note: string) => void }) {
  const id = useId()
  return (
    <div class="field wide">
      <label for={id}>Note</label>
      <textarea
        id={id}
        rows={2}
        value={thing.note ?? ''}
        onInput={event => onNote(event.currentTarget.value.slice(0, NOTE_LENGTH))}
      />
    </div>
  )
}

function Weighed({ thing, onDay }: { thing: Thing; onDay: (day: string) => void }) {
  const id = useId()
  return (
    <div class="field">
      <label for={id}>Weighed on</label>
      <div class="beside">
        <input
          id={id}
          type="date"
          value={thing.weighedOn ?? ''}
          onChange={event => onDay(event.currentTarget.value)}
        />
        <button type="button" class="quiet" onClick={() => onDay(today())}>
          Today
        </button>
      </div>
    </div>
  )
}

/** The reader's day, as the shelf holds it. */
function today(): string {
  const now = new Date()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
