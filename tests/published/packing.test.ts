// The two-class packing model against values of its equations and against its published limits.
// Sources: stovall-1986 and furnas-1931 (keys of data/sources.json); each case says its own standing.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Packing, roomFor, roomRange } from '../../src/reckon'
import values from './packing.values.json'

const packingOf = (packing: Partial<Packing>): Packing => ({
  rigidPacking: 0.75,
  softPacking: 0.95,
  filling: 0.5,
  factor: 1,
  ...packing,
})

/** Share of solid in the room that a litre takes, `coarseShare` of it rigid. */
const densityAt = (coarseShare: number, packing: number) =>
  1 /
  roomFor(
    coarseShare,
    1 - coarseShare,
    packingOf({ rigidPacking: packing, softPacking: packing, filling: 1 }),
  ).bodyLitres

const litres = fc.double({ min: 0, max: 100, noNaN: true })
const packings = fc.record({
  rigidPacking: fc.double({ min: 0.3, max: 1, noNaN: true }),
  softPacking: fc.double({ min: 0.3, max: 1, noNaN: true }),
  filling: fc.double({ min: 0, max: 1, noNaN: true }),
  factor: fc.constant(1),
})

describe('the two-class packing model', () => {
  it.each(values.litres)(
    '$id: rigid $rigid L, soft $soft L, filled $fillEfficiency take $expected L ($kind, $source)',
    ({ rigid, soft, expected, tolerance, rigidPacking, softPacking, fillEfficiency: filling }) => {
      const packing = packingOf({ rigidPacking, softPacking, filling })
      expect(Math.abs(roomFor(rigid, soft, packing).bodyLitres - expected)).toBeLessThanOrEqual(tolerance)
    },
  )

  it.each(values.densest)(
    '$id: with perfect filling it is densest at the coarse share $coarseShare ($kind, $source)',
    ({ packing, coarseShare, density, tolerance }) => {
      expect(Math.abs(densityAt(coarseShare, packing) - density)).toBeLessThan(tolerance)
      const others = Array.from({ length: 101 }, (_, percent) => densityAt(percent / 100, packing))
      for (const other of others) expect(other).toBeLessThanOrEqual(density + tolerance)
    },
  )

  it('is Furnas’ perfect filling at e = 1: the larger of R/Pr and R + S (furnas-1931)', () => {
    const property = fc.property(litres, litres, packings, (R, S, packing) => {
      const { bodyLitres } = roomFor(R, S, { ...packing, softPacking: 1, filling: 1 })
      expect(bodyLitres).toBeCloseTo(Math.max(R / packing.rigidPacking, R + S), 9)
    })
    fc.assert(property)
  })

  it('lays both kinds side by side at e = 0: R/Pr + S/Ps (stovall-1986, no filling)', () => {
    const property = fc.property(litres, litres, packings, (R, S, packing) => {
      const { bodyLitres } = roomFor(R, S, { ...packing, filling: 0 })
      expect(bodyLitres).toBeCloseTo(R / packing.rigidPacking + S / packing.softPacking, 9)
    })
    fc.assert(property)
  })

  it('never falls as things are added, never beats perfect filling, never exceeds no filling', () => {
    const property = fc.property(litres, litres, litres, packings, (R, S, more, packing) => {
      const { bodyLitres } = roomFor(R, S, packing)
      const { low, high } = roomRange(R, S, packing)
      const room = 1e-9 * (1 + bodyLitres)
      expect(bodyLitres).toBeGreaterThanOrEqual(low - room)
      expect(bodyLitres).toBeLessThanOrEqual(high + room)
      expect(roomFor(R + more, S, packing).bodyLitres).toBeGreaterThanOrEqual(bodyLitres - room)
      expect(roomFor(R, S + more, packing).bodyLitres).toBeGreaterThanOrEqual(bodyLitres - room)
    })
    fc.assert(property)
  })

  it('has slopes that are those of the litres, on either side of the change of terms', () => {
    const property = fc.property(litres, litres, packings, (R, S, packing) => {
      const { bodyLitres, perRigidLitre, perSoftLitre } = roomFor(R, S, packing)
      expect(R * perRigidLitre + S * perSoftLitre).toBeCloseTo(bodyLitres, 9)
    })
    fc.assert(property)
  })
})
