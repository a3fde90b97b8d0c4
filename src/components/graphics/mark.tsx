// The marks of stops: the same signs in the strip under the load, on the terrain and in the key.

import { px } from './scale'
import type { MarkKind } from './stop-strip'

/** Signs of 2 × 2 about the origin: a drop (full or empty), a tent, a crate. */
const SIGNS: Record<MarkKind, string> = {
  sure: 'M0-1Q.75 0 .75.35A.75.65 0 0 1-.75.35Q-.75 0 0-1Z',
  doubtful: 'M0-1Q.75 0 .75.35A.75.65 0 0 1-.75.35Q-.75 0 0-1Z',
  night: 'M0-.9L.95.85H-.95Z',
  resupply: 'M-.8-.7H.8V.8H-.8ZM-.8-.15H.8M0-.15V.8',
}

export function Mark({ kind, x, y, size }: { kind: MarkKind; x: number; y: number; size: number }) {
  return (
    <path
      d={SIGNS[kind]}
      class={`mark mark-${kind}`}
      transform={`translate(${px(x)} ${px(y)}) scale(${px(size) / 2})`}
    />
  )
}
