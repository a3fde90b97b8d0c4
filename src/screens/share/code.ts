// A text as a code for cameras (QR, ISO/IEC 18004): the library gives the modules, the outline is drawn here.
// Loaded only when somebody asks for a code.

import { correction, generate } from 'lean-qr/nano'

export interface Code {
  /** Modules a side, without the quiet zone. */
  size: number
  /** The dark modules as an SVG path, one unit a module. */
  path: string
}

/** Modules that must stay white on every side (ISO/IEC 18004; from memory). */
export const QUIET = 4

/** The code for a text of at most about 2,900 bytes; it throws beyond. */
export function codeOf(text: string): Code {
  const { size, get } = generate(text, { minCorrectionLevel: correction.L })
  const runs: string[] = []
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) {
      const from = x
      while (get(x, y)) x++
      if (x > from) runs.push(`M${from} ${y}h${x - from}v1h${from - x}z`)
    }
  return { size, path: runs.join('') }
}

/**
 * CSS px a module: as large as the room allows in whole device px, at most 8; never under 3 device px, even where
 * the code then is wider than its room.
 */
export function modulePx(modules: number, roomPx: number, devicePxPerPx: number): number {
  const devicePx = Math.floor((roomPx * devicePxPerPx) / modules)
  return Math.min(8, Math.max(3, devicePx) / devicePxPerPx)
}
