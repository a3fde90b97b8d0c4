// The code for cameras: its outline is exactly the library's modules, and no module is too fine to read.

import fc from 'fast-check'
import { generate } from 'lean-qr/nano'
import { describe, expect, test } from 'vitest'
import { codeOf, modulePx, QUIET } from '../../src/screens/share/code'

/** The dark modules that an outline of runs covers, as "x,y". */
function modulesOf(path: string): Set<string> {
  const modules = new Set<string>()
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let i = 0; i < Number(length); i++) modules.add(`${Number(x) + i},${y}`)
  return modules
}

describe('a code', () => {
  test('covers the dark modules of its matrix and no other', () => {
    for (const text of ['https://packs.example/#plan=1.AbC-_9', 'x'.repeat(1200)]) {
      const { size, path } = codeOf(text)
      const matrix = generate(text)
      const dark = new Set<string>()
      for (let y = 0; y < matrix.size; y++)
        for (let x = 0; x < matrix.size; x++) if (matrix.get(x, y)) dark.add(`${x},${y}`)
      expect(size).toBe(matrix.size)
      expect(modulesOf(path)).toEqual(dark)
      expect(dark.size).toBeGreaterThan(size)
    }
  })

  test('never has modules under 3 device px, falls on whole ones, and keeps to its room where that allows 3', () => {
    const room = fc.integer({ min: 280, max: 2000 })
    const modules = fc.integer({ min: 21 + 2 * QUIET, max: 133 })
    fc.assert(
      fc.property(modules, room, fc.constantFrom(1, 2, 3), (count, roomPx, ratio) => {
        const px = modulePx(count, roomPx, ratio)
        expect(px * ratio).toBeGreaterThanOrEqual(3)
        expect(px * ratio).toBe(Math.round(px * ratio))
        if ((roomPx * ratio) / count >= 3) expect(px * count).toBeLessThanOrEqual(roomPx)
      }),
    )
  })
})
