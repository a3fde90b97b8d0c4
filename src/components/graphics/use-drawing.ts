// The room a drawing has, in real CSS px: its width, its text size, and a measure of its text.
// Drawings are laid out anew for every width, so that text keeps its size and strokes their weight.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { guessWidth, type Measure } from './fit-text'

export interface Room {
  widthPx: number
  emPx: number
  measure: Measure
  /** The same for text in heavy type. */
  measureBold: Measure
}

const FIRST: Room = { widthPx: 320, emPx: 13, measure: guessWidth(13), measureBold: guessWidth(15) }

let pen: CanvasRenderingContext2D | null | undefined

function measureIn({ fontSize, fontFamily }: CSSStyleDeclaration, emPx: number, weight: number): Measure {
  pen ??= document.createElement('canvas').getContext?.('2d')
  const measuring = pen
  if (!measuring) return guessWidth(weight > 400 ? emPx * 1.15 : emPx)
  return text => {
    measuring.font = `${weight} ${fontSize} ${fontFamily}`
    return measuring.measureText(text).width
  }
}

/**
 * Put `ref` on the box that holds the drawing and, so that a new text size is noticed, a line of text too. Until
 * `isMeasured`, the room is a guess: what is dear to draw waits for it.
 */
export function useRoom() {
  const ref = useRef<HTMLDivElement>(null)
  const [room, setRoom] = useState(FIRST)
  useLayoutEffect(() => {
    const box = ref.current
    if (!box) return
    const look = () => {
      const style = getComputedStyle(box)
      const emPx = Number.parseFloat(style.fontSize) || FIRST.emPx
      const widthPx = Math.floor(box.clientWidth) || FIRST.widthPx
      setRoom(before =>
        before.widthPx === widthPx && before.emPx === emPx && before.measure !== FIRST.measure
          ? before
          : {
              widthPx,
              emPx,
              measure: measureIn(style, emPx, 400),
              measureBold: measureIn(style, emPx, 650),
            },
      )
    }
    look()
    if (typeof ResizeObserver === 'undefined') return
    const watch = new ResizeObserver(look)
    watch.observe(box)
    return () => watch.disconnect()
  }, [])
  return { ref, room, isMeasured: room !== FIRST }
}
