// Laws of the rate for the thirsty end of people: what is added to the heat table's, and what never happens to it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { thirstyRate } from '../../src/equations'
import { value } from './cases'

const within = (range: { min: number; max: number }) => fc.double({ ...range, noNaN: true })

describe('the rate for the thirsty end', () => {
  const added = (wbgtC: number, fullSun = false) =>
    value(thirstyRate({ wbgtC, watts: 400, fullSun })).addedLitresPerHour

  it('is the table and a quarter quart, which grows in a line from nothing at 15 °C WBGT to all of it at 25.6 °C', () => {
    expect([-20, 15, 20.3, 25.6, 40].map(wbgtC => added(wbgtC))).toEqual([
      0,
      0,
      expect.closeTo(0.1183, 4),
      expect.closeTo(0.2366, 4),
      expect.closeTo(0.2366, 4),
    ])
  })

  it('counts full sun as much again', () => {
    fc.assert(
      fc.property(within({ min: -30, max: 60 }), wbgtC => {
        expect(added(wbgtC, true)).toBeCloseTo(2 * added(wbgtC), 12)
      }),
    )
  })

  it('is never under the table, never over the hourly cap, and does not fall as heat rises', () => {
    const heat = within({ min: -30, max: 60 })
    fc.assert(
      fc.property(heat, heat, within({ min: 0, max: 1200 }), fc.boolean(), (a, b, watts, fullSun) => {
        const at = (wbgtC: number) => value(thirstyRate({ wbgtC, watts, fullSun }))
        const [cool, hot] = [at(Math.min(a, b)), at(Math.max(a, b))]
        expect(cool.litresPerHour).toBeGreaterThanOrEqual(cool.tableLitresPerHour)
        expect(hot.litresPerHour).toBeGreaterThanOrEqual(cool.litresPerHour - 1e-12)
        expect(hot.litresPerHour).toBeLessThanOrEqual(1.42)
      }),
    )
  })
})
