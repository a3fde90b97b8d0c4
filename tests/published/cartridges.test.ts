// The choice of cartridges, against a table of least masses built another way (by dynamic programming).

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cartridgeClasses, cartridgesFor } from '../../src/equations'
import { value } from './cases'

/** least[n]: least mass, then fewest pieces, that hold at least 10 n grams. */
const least: { fullG: number; count: number }[] = [{ fullG: 0, count: 0 }]
for (let tens = 1; tens <= 500; tens++) {
  const options = cartridgeClasses.map(({ netG, emptyG }) => {
    const before = least[Math.max(0, tens - netG / 10)]!
    return { fullG: before.fullG + netG + emptyG, count: before.count + 1 }
  })
  least.push(options.sort((a, b) => a.fullG - b.fullG || a.count - b.count)[0]!)
}

describe('the cartridges for a need', () => {
  it('cover it with the least mass and then the fewest pieces, for any need up to 5 kg', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), needG => {
        const choice = value(cartridgesFor({ needG }))
        const count = choice.pieces.reduce((sum, piece) => sum + piece.count, 0)
        expect(choice.netG).toBeGreaterThanOrEqual(needG)
        expect({ fullG: choice.fullG, count }).toEqual(
          least[least.findIndex((_, tens) => 10 * tens >= needG)],
        )
      }),
    )
  })

  it('add up to their own totals', () => {
    for (const needG of [1, 100, 101, 240, 700, 1234, 5000]) {
      const choice = value(cartridgesFor({ needG }))
      const sum = (of: 'netG' | 'emptyG' | 'outerLitres') =>
        choice.pieces.reduce(
          (total, { netG, count }) => total + count * cartridgeClasses.find(c => c.netG === netG)![of],
          0,
        )
      expect(choice.netG).toBe(sum('netG'))
      expect(choice.emptyG).toBe(sum('emptyG'))
      expect(choice.fullG).toBe(choice.netG + choice.emptyG)
      expect(choice.outerLitres).toBeCloseTo(sum('outerLitres'), 10)
    }
  })

  it('change from one size to the next where the need passes it', () => {
    const netOf = (needG: number) =>
      value(cartridgesFor({ needG })).pieces.map(({ netG, count }) => [netG, count])
    expect(netOf(100)).toEqual([[100, 1]])
    expect(netOf(100.1)).toEqual([[230, 1]])
    expect(netOf(230.1)).toEqual([
      [230, 1],
      [100, 1],
    ])
    expect(netOf(330.1)).toEqual([[450, 1]])
  })
})
