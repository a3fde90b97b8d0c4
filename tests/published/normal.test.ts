// The normal distribution function against published quantiles and values, its symmetry, and the integral that
// defines it. Standing: quantiles and values are those of any table of the normal distribution, here written from
// memory at six and more digits and confirmed by the integral.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../src/reckon'
import { phi } from '../engine/naive-packs'
import { noWater, reckonSmall } from '../engine/small-plans'

const quantiles = [
  { p: 0.8, z: 0.841621 },
  { p: 0.9, z: 1.281552 },
  { p: 0.95, z: 1.644854 },
  { p: 0.975, z: 1.959964 },
  { p: 0.99, z: 2.326348 },
  { p: 0.995, z: 2.575829 },
]

/** Abramowitz & Stegun, Handbook of Mathematical Functions (1964), table 26.1, from memory. */
const table = [
  { z: 0, p: 0.5 },
  { z: 0.5, p: 0.691462461274013 },
  { z: 1, p: 0.841344746068543 },
  { z: 1.5, p: 0.933192798731142 },
  { z: 2, p: 0.977249868051821 },
  { z: 3, p: 0.99865010196837 },
]

/** Tails Q(z) = Φ(−z), computed from the integral and known to textbooks at these digits. */
const tails = [
  { z: 4, q: 3.167124183311992e-5 },
  { z: 5, q: 2.866515718791939e-7 },
  { z: 6, q: 9.865876450376946e-10 },
]

const relative = (got: number, expected: number) => Math.abs(got / expected - 1)

describe('the normal distribution function', () => {
  it.each(quantiles)('is $p at its quantile $z (computed from the published equation)', ({ p, z }) => {
    expect(Math.abs(normalCdf(z) - p)).toBeLessThan(2e-7)
  })

  it.each(table)('is $p at $z (from memory)', ({ z, p }) => {
    expect(Math.abs(normalCdf(z) - p)).toBeLessThan(1e-14)
  })

  it.each(tails)('is $q at −$z, to 11 digits (computed from the published equation)', ({ z, q }) => {
    expect(relative(normalCdf(-z), q)).toBeLessThan(1e-11)
  })

  it('is the integral of the density, to 11 digits, from −37 to 8', () => {
    for (let z = -37; z <= 8; z += 0.37) expect(relative(normalCdf(z), phi(z)), `${z}`).toBeLessThan(1e-11)
  })

  it('joins smoothly where one way of computing it takes over from the other', () => {
    const join = -2.5 * Math.SQRT2
    expect(relative(normalCdf(join - 1e-13), normalCdf(join + 1e-13))).toBeLessThan(2e-12)
  })

  it('is symmetric, rises, and stays between 0 and 1', () => {
    const z = fc.double({ min: -40, max: 40, noNaN: true })
    const property = fc.property(z, z, (a, b) => {
      expect(normalCdf(a) + normalCdf(-a)).toBeCloseTo(1, 14)
      expect(normalCdf(Math.min(a, b))).toBeLessThanOrEqual(normalCdf(Math.max(a, b)) + 1e-15)
      expect(normalCdf(a)).toBeGreaterThanOrEqual(0)
      expect(normalCdf(a)).toBeLessThanOrEqual(1)
    })
    fc.assert(property)
  })

  it('is 0, 1 and not a number where it must be', () => {
    expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0)
    expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1)
    expect(normalCdf(Number.NaN)).toBeNaN()
  })
})

describe('the chance of a fit (computed from the published equation)', () => {
  // 44 L of water in the main body are exact; the packing spread makes them 44 ± 2.5 L.
  const chance = (bodyLitres: number) =>
    reckonSmall({
      water: { ...noWater, reserveLitres: 44 },
      settings: { softPacking: 1, personalFactorSpread: 2.5 / 44 },
      packs: [
        { name: 'P', bodyLitres, bodyFrom: 'measured', setups: [{ name: 's', massKg: 1, frame: 'framed' }] },
      ],
    }).packs[0]!.fitChance

  it.each([
    { id: 'fit.P_50', litres: 50, z: 2.0785, expected: 0.9811665 },
    { id: 'fit.P_45', litres: 45, z: 0.3549, expected: 0.6386837 },
  ])('$id: $litres L known to ± 5 % for 44 ± 2.5 L fit with z = $z', ({ litres, z, expected }) => {
    expect(Math.abs(chance(litres) - expected)).toBeLessThan(1e-6)
    expect(Math.abs(normalCdf(z) - expected)).toBeLessThan(1e-4)
  })

  it('is one half when the pack has just the litres needed', () => {
    expect(chance(44)).toBeCloseTo(0.5, 12)
  })
})
