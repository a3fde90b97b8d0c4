// The menu of a row: its actions in a sheet.

import { useRef, useState } from 'preact/hooks'
import { Sheet } from '../../components/why'
import type { DraftPack } from '../../plan'
import { openTrip } from '../../store'
import { PackActions } from './PackActions'
import type { Place } from './pack-actions'

export function PackMenu({ pack, name, place }: { pack: DraftPack; name: string; place: Place }) {
  const [open, setOpen] = useState(false)
  const button = useRef<HTMLButtonElement>(null)
  const close = () => {
    setOpen(false)
    button.current?.focus({ preventScroll: true })
  }
  return (
    <>
      <button
        ref={button}
        type="button"
        class="row-menu"
        aria-label={`Actions for ${name}`}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        ⋯
      </button>
      {open ? (
        <Sheet title={name} onClose={close}>
          <PackActions {...{ pack, name, place }} isApart={!openTrip.value} onDone={close} />
        </Sheet>
      ) : null}
    </>
  )
}
