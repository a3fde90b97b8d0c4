// The tagged pack kept as a candidate of the open trip, in one step that undo takes back.

import { useState } from 'preact/hooks'
import { keepTag, type Tag } from '../../plan'
import { actions, lastLabel, newId, openTrip } from '../../store'

export function Keep({ tag, known, onKept }: { tag: Tag; known: boolean; onKept: () => void }) {
  const [kept, setKept] = useState<string | null>(null)
  const keep = () => {
    const called = tag.name ?? `Pack ${(openTrip.value?.draft.packs.length ?? 0) + 1}`
    const label = `Add pack ${called}`
    actions.edit(label, draft => keepTag(draft, { ...tag, name: called }, newId))
    setKept(label)
    onKept()
  }
  return (
    <>
      {known ? (
        <button type="button" class="primary" onClick={keep}>
          Keep it as a candidate
        </button>
      ) : null}
      {kept && lastLabel.value === kept ? (
        <p class="done" role="status">
          Kept: <bdi>{kept.replace(/^Add pack /, '')}</bdi> is among the packs of{' '}
          <bdi>{openTrip.value?.draft.name || 'this trip'}</bdi> now.{' '}
          <button type="button" class="quiet" onClick={() => actions.undo()}>
            Undo
          </button>
        </p>
      ) : null}
    </>
  )
}
