// A part of a place that the way back closes, as it does a sheet.

import { useLayoutEffect, useRef } from 'preact/hooks'
import { enterSheet, leaveSheet } from './sheet-history'

/** While this is drawn, the way back calls `onBack` and stays in the app. */
export function useWayBack(onBack: () => void): void {
  const latest = useRef(onBack)
  latest.current = onBack
  useLayoutEffect(() => {
    const close = () => latest.current()
    enterSheet(close)
    return () => leaveSheet(close)
  }, [])
}
