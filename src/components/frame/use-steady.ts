// What stands above other things keeps its height while something is pressed: a button that moved between press and
// release would not be tapped.

import { useEffect, useRef, useState } from 'preact/hooks'

/** The value as it is; while a finger or a button of the mouse is down, as it was before. */
export function useSteady<T>(now: T): T {
  const [isPressed, setPressed] = useState(false)
  const before = useRef(now)
  if (!isPressed) before.current = now
  useEffect(() => {
    const press = () => setPressed(true)
    // The tap itself comes after the release.
    const release = () => void setTimeout(() => setPressed(false))
    addEventListener('pointerdown', press, true)
    for (const type of RELEASES) addEventListener(type, release, true)
    return () => {
      removeEventListener('pointerdown', press, true)
      for (const type of RELEASES) removeEventListener(type, release, true)
    }
  }, [])
  return before.current
}

const RELEASES = ['pointerup', 'pointercancel'] as const
