// Headings that take the focus where what was tapped is gone, so that the way goes on from there and not from the top.

import { useEffect, useRef } from 'preact/hooks'

const SHELF_HEAD = 'shelf-head'

export const ShelfHead = () => (
  <h2 id={SHELF_HEAD} tabIndex={-1}>
    Shelf
  </h2>
)

/** Once the list is back. */
export function toShelfHead() {
  requestAnimationFrame(() => document.getElementById(SHELF_HEAD)?.focus())
}

/** The heading of a step over the list. */
export function StepHead({ title }: { title: string }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <h3 ref={heading} tabIndex={-1}>
      {title}
    </h3>
  )
}
