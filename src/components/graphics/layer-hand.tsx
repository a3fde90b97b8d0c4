// The hand on the cutaway: a slider over its layers. Tap one, or use the arrow keys.

import { clamp } from './scale'

interface LayerHandProps {
  /** Bottom to top. */
  layers: readonly { y: number; height: number }[]
  /** Null: none is chosen. */
  chosen: number | null
  onChoose(index: number): void
  /** A layer in words. */
  textOf(index: number): string
}

export function LayerHand({ layers, chosen, onChoose, textOf }: LayerHandProps) {
  const last = layers.length - 1
  const at = clamp(chosen ?? 0, 0, last)
  const steps: Record<string, number> = {
    ArrowUp: at + 1,
    ArrowRight: at + 1,
    ArrowDown: at - 1,
    ArrowLeft: at - 1,
    Home: 0,
    End: last,
  }
  return (
    <div
      class="layer-hand"
      role="slider"
      tabIndex={0}
      aria-label="Layer in the pack"
      aria-orientation="vertical"
      aria-valuemin={1}
      aria-valuemax={layers.length}
      aria-valuenow={at + 1}
      aria-valuetext={textOf(at)}
      onKeyDown={event => {
        const step = event.altKey || event.ctrlKey || event.metaKey ? undefined : steps[event.key]
        if (step === undefined) return
        event.preventDefault()
        onChoose(clamp(step, 0, last))
      }}
      onClick={event => {
        const y = event.clientY - event.currentTarget.getBoundingClientRect().top
        const touched = layers.findIndex(layer => y >= layer.y && y <= layer.y + layer.height)
        if (touched >= 0) onChoose(touched)
      }}
    />
  )
}
