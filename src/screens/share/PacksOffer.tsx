// Packs that somebody gave on, before any of them is kept: how many are new, and adding those.

import { useMemo } from 'preact/hooks'
import { CAPS, type DraftPack, emptyDraft } from '../../plan'
import { givenToList } from '../../plan/shelf'
import { actions, newId, shelf } from '../../store'
import { counted } from '../../units'

interface PacksOfferProps {
  packs: DraftPack[]
  /** What could not be read of them, in words. */
  leftOut: readonly string[]
  onDone: () => void
}

export function PacksOffer({ packs, leftOut, onDone }: PacksOfferProps) {
  const giver = useMemo(
    () => ({ id: newId(), demo: false, draft: { ...emptyDraft(), name: 'given', packs }, typed: {} }),
    [packs],
  )
  const fresh = givenToList(shelf.value, [giver]).shelf.packs.length - shelf.value.packs.length
  const here = packs.length - fresh
  const room = CAPS.packs - shelf.value.packs.length
  const label = `Add ${counted(fresh, 'pack')}`
  const keep = () => {
    actions.editShelf(label, list => givenToList(list, [giver]).shelf)
    actions.setPlace({ screen: 'own-packs', detail: null, scrollY: 0 })
    onDone()
  }
  return (
    <>
      <p class="lead">
        {counted(packs.length, 'pack')}
        {here > 0 ? `, ${here} of them yours already` : ''}.
      </p>
      {leftOut.length > 0 ? <p class="problem">Left out: {leftOut.slice(0, 5).join('; ')}.</p> : null}
      {fresh > room ? (
        <p class="problem">Your list has room for {room} more: delete some packs first.</p>
      ) : null}
      <div class="actions">
        {fresh > 0 && fresh <= room ? (
          <button type="button" class="primary" onClick={keep}>
            {label}
          </button>
        ) : null}
        <button type="button" class="quiet" onClick={onDone}>
          {fresh > 0 ? 'Leave them' : 'Go on'}
        </button>
      </div>
      <p class="hint">They join your list of packs; none of yours changes. One step undoes it.</p>
    </>
  )
}
