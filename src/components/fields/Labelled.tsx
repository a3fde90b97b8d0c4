import type { ComponentChildren } from 'preact'
import { useId } from 'preact/hooks'

interface LabelledProps {
  label: string
  hint?: string | undefined
  wide?: boolean
  /** The control, with the id that its label names and that of its hint. */
  children: (ids: { id: string; describedBy: string | undefined }) => ComponentChildren
}

/** A control under its label, with its hint. */
export function Labelled({ label, hint, wide = false, children }: LabelledProps) {
  const id = useId()
  const hintId = hint ? `${id}-hint` : undefined
  return (
    <div class={wide ? 'field wide' : 'field'}>
      <label for={id}>{label}</label>
      <div class="control">
        {children({ id, describedBy: hintId })}
        {hint ? (
          <p id={hintId} class="hint">
            {hint}
          </p>
        ) : null}
      </div>
    </div>
  )
}
