// That figures can be asked: said once a device, until the line was seen or a figure was asked.

import { useEffect, useRef, useState } from 'preact/hooks'
import { actions, library } from '../../store'

export function AskHint() {
  const line = useRef<HTMLParagraphElement>(null)
  // It does not go while it is read.
  const [isNew] = useState(() => !library.peek().toldWhy)
  useEffect(() => {
    if (!line.current) return
    const watch = new IntersectionObserver(seen => {
      if (seen.some(({ isIntersecting }) => isIntersecting)) actions.noteToldWhy()
    })
    watch.observe(line.current)
    return () => watch.disconnect()
  }, [])
  if (!isNew) return null
  return (
    <p ref={line} class="hint">
      Tap a dotted figure to see how it is calculated.
    </p>
  )
}
