import { useRef } from 'preact/hooks'
import { library } from '../../store'

/** The screen that a screen was opened from, last time; empty before the first. */
export function useBefore(of: string): string {
  const last = useRef('')
  const before = useRef('')
  const { screen } = library.value.place
  if (screen === of && last.current !== of) before.current = last.current
  last.current = screen
  return before.current
}
