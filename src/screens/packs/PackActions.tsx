// The actions of a pack: star, set aside with a reason, take on this trip, move, duplicate, delete.

import { useId, useState } from 'preact/hooks'
import type { DraftPack } from '../../plan'
import { openTrip } from '../../store'
import { editsOf, type Place, setAside, setStarred, take } from './pack-actions'

interface PackActionsProps {
  pack: DraftPack
  name: string
  place: Place
  isApart: boolean
  /** After each that leaves the pack where it is. */
  onDone?: () => void
  /** After it was duplicated or deleted. */
  onGone?: () => void
}

export function PackActions({ pack, name, place, isApart, onDone, onGone }: PackActionsProps) {
  const [isAsking, setAsking] = useState(false)
  const { moveUp, moveDown, duplicate, remove } = editsOf(pack, name, place)
  // By what it is about and not by its words, so that the focus stays while they change.
  const action = (key: string, label: string, act: (() => void) | undefined, then = onDone) =>
    act ? (
      <button
        key={key}
        type="button"
        class="quiet"
        aria-label={`${label} ${name}`}
        onClick={() => {
          act()
          then?.()
        }}
      >
        {label}
      </button>
    ) : null
  const isAside = pack.aside !== undefined
  return (
    <>
      <div class="actions pack-actions">
        {action('star', pack.starred ? 'Remove star' : 'Star', () => setStarred(pack, !pack.starred))}
        {isApart ? null : takings(pack).map(({ setup, label, act }) => action(`take ${setup}`, label, act))}
        {isAside ? (
          action('aside', 'Use again', () => setAside(pack, null))
        ) : (
          <button
            key="aside"
            type="button"
            class="quiet"
            aria-label={`Set aside ${name}`}
            aria-expanded={isAsking}
            onClick={() => setAsking(!isAsking)}
          >
            Set aside
          </button>
        )}
        {action('up', 'Move up', moveUp)}
        {action('down', 'Move down', moveDown)}
        {action('duplicate', 'Duplicate', duplicate, onGone ?? onDone)}
        {action('delete', 'Delete', remove, onGone ?? onDone)}
      </div>
      {isAsking && !isAside ? (
        <AskWhy
          onWhy={why => {
            setAsking(false)
            setAside(pack, why)
            onDone?.()
          }}
        />
      ) : null}
    </>
  )
}

/** For each set-up: taken on the open trip, or not any more. */
function takings(pack: DraftPack): { setup: string; label: string; act: () => void }[] {
  const trip = openTrip.value
  if (!trip) return []
  const { takes } = trip.draft
  return pack.setups.map(({ id, name }, i) => {
    const which = pack.setups.length > 1 ? `, ${name || `set-up ${i + 1}`}` : ''
    const isTaken = takes?.pack === pack.id && takes.setup === id
    return isTaken
      ? { setup: id, label: `Not on this trip${which}`, act: () => take(pack, null) }
      : { setup: id, label: `Take on this trip${which}`, act: () => take(pack, id) }
  })
}

function AskWhy({ onWhy }: { onWhy: (why: string) => void }) {
  const id = useId()
  const [why, setWhy] = useState('')
  return (
    <form
      class="ask-why"
      onSubmit={event => {
        event.preventDefault()
        onWhy(why.trim())
      }}
    >
      <div class="field wide">
        <label for={id}>Why? May stay empty</label>
        <input
          id={id}
          type="text"
          maxLength={200}
          value={why}
          onInput={event => setWhy(event.currentTarget.value)}
        />
      </div>
      <button type="submit">Set it aside</button>
    </form>
  )
}
