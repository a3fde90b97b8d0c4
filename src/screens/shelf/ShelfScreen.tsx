// The shelf: everything one owns, in one list to search, keep and pack from; and the bases made of it.

import { useEffect, useRef, useState } from 'preact/hooks'
import { Choice } from '../../components/fields'
import { UndoRedo } from '../../components/frame'
import { actions, library, openTrip, shelf } from '../../store'
import { counted } from '../../units'
import { Bases } from './Bases'
import { ShelfHead } from './heads'
import { Things } from './Things'
import './shelf.css'

/** `detail` is `thing/<id>`, `bases`, `base/<id>`, or `choose` while several things are being chosen. */
export function ShelfScreen({ onClose }: { onClose: () => void }) {
  const { place } = library.value
  // Beside other screens it stays as it was while the place is one of theirs.
  const own = useRef<string | null>(null)
  if (place.screen === 'shelf') own.current = place.detail
  const detail = own.current
  const { things, bases } = shelf.value
  const [said, setSaid] = useState<{ text: string } | null>(null)
  const saying = useRef<HTMLParagraphElement>(null)
  // What was tapped is gone with its step.
  useEffect(() => {
    if (said) saying.current?.focus()
  }, [said])
  const isBases = detail === 'bases' || detail?.startsWith('base/') === true
  const go = (to: string | null) => {
    setSaid(null)
    actions.setPlace({ screen: 'shelf', detail: to, scrollY })
  }
  const onSaid = (text: string, to: string | null) => {
    actions.setPlace({ screen: 'shelf', detail: to, scrollY: 0 })
    setSaid({ text })
  }
  return (
    <div class="screen shelf">
      <div class="heading">
        <ShelfHead />
        <div class="head-actions">
          {openTrip.value ? null : <UndoRedo />}
          <button type="button" class="quiet" onClick={onClose}>
            Close
          </button>
        </div>
      </div>
      <Choice
        label="On the shelf"
        options={[
          { value: 'things', label: counted(things.length, 'item') },
          { value: 'bases', label: counted(bases.length, 'kit') },
        ]}
        chosen={isBases ? 'bases' : 'things'}
        onChoose={value => go(value === 'bases' ? 'bases' : null)}
      />
      <p ref={saying} tabIndex={-1} role="status" class={said ? 'said' : 'unseen'}>
        {said?.text}
      </p>
      {isBases ? (
        <Bases detail={detail} onDetail={go} onSaid={onSaid} />
      ) : (
        <Things detail={detail} onDetail={go} onSaid={onSaid} />
      )}
    </div>
  )
}
