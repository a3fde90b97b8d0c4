// What can be asked about: a button in the text, and the sheet with the answer that it opens.

import type { ComponentChildren } from 'preact'
import { useRef, useState } from 'preact/hooks'
import { actions } from '../../store'
import { Sheet } from './Sheet'
import './why.css'

interface AskProps {
  /** What the button shows. */
  children: ComponentChildren
  /** What the sheet is called. */
  title: string
  /** What stands in the sheet, made when it is opened. */
  answer: () => ComponentChildren
  class?: string
}

export function Ask({ children, title, answer, class: className = 'ask' }: AskProps) {
  const [open, setOpen] = useState(false)
  const button = useRef<HTMLButtonElement>(null)
  const close = () => {
    setOpen(false)
    // Unless a field was gone to from the sheet.
    if (document.activeElement === document.body) button.current?.focus({ preventScroll: true })
  }
  return (
    <>
      <button
        ref={button}
        type="button"
        class={className}
        aria-haspopup="dialog"
        onClick={() => {
          actions.noteToldWhy()
          setOpen(true)
        }}
      >
        {children}
      </button>
      {open ? (
        <Sheet title={title} onClose={close}>
          {answer()}
        </Sheet>
      ) : null}
    </>
  )
}
