// A sheet over the page: from below on a phone, at the side of a desk. Escape, the way back, a tap beside it and its
// button close it; the page behind it stays where it was, and the focus returns to what opened it.

import type { ComponentChildren } from 'preact'
import { useId, useLayoutEffect, useRef } from 'preact/hooks'
import { enterSheet, leaveSheet } from './sheet-history'

interface SheetProps {
  title: string
  onClose: () => void
  children: ComponentChildren
}

export function Sheet({ title, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const id = useId()
  useLayoutEffect(() => {
    const box = dialog.current
    if (!box) return
    box.showModal()
    const close = () => box.close()
    const tapBeside = (event: MouseEvent) => {
      if (event.target === box) close()
    }
    box.addEventListener('click', tapBeside)
    enterSheet(close)
    return () => leaveSheet(close)
  }, [])
  return (
    <dialog ref={dialog} class="over-page" aria-labelledby={id} onClose={onClose}>
      <div class="over-box">
        <header class="over-head">
          <h2 id={id}>{title}</h2>
          <button type="button" class="quiet icon" aria-label="Close" onClick={() => dialog.current?.close()}>
            ×
          </button>
        </header>
        {children}
      </div>
    </dialog>
  )
}
