// What is dear to draw follows the frame that shows the rest: the list beside a chart need not wait for its marks.

import { useEffect, useState } from 'preact/hooks'

/** Whether a frame without it has been shown; from then on it is drawn with the rest. `isReady`: it could be drawn. */
export function usePainted(isReady: boolean): boolean {
  const [isPainted, setPainted] = useState(false)
  useEffect(() => {
    if (!isReady || isPainted) return
    let timer: ReturnType<typeof setTimeout> | undefined
    const frame = requestAnimationFrame(() => {
      timer = setTimeout(setPainted, 0, true)
    })
    return () => {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
    }
  }, [isReady, isPainted])
  return isReady && isPainted
}
