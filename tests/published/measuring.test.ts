// Litres measured at home, squeezed and rolled, against values computed elsewhere; and the rules of uncertainty against
// the GUM's own examples (gum-2008, from memory) and the weight of EA-4/02 S2 (ea-4-02, third-party copy).

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  boxLitres,
  cylinderLitres,
  displacedLitres,
  type Fill,
  fillDensityGPerLitre,
  filledBoxLitres,
  girthLitres,
  insulatedLitres,
  type Measured,
  matLitres,
  matReadings,
  type Outcome,
  readingHalfWidths,
  rolledMat,
  softSqueeze,
  squeezedShare,
  type squeezes,
} from '../../src/equations'
import type { ItemDocument } from '../../src/plan'
import { noWater, reckonSmall } from '../engine/small-plans'
import { type Case, value } from './cases'
import { type Given, itReproduces, type Run } from './measured-cases'
import collection from './measuring.values.json'

const cm = (mm: number) => mm / 10
const box = (of: typeof boxLitres, sidesMm: number[], more: object = {}) => {
  const [lengthCm, widthCm, heightCm] = sidesMm.map(cm) as [number, number, number]
  return value(of({ lengthCm, widthCm, heightCm, ...more }))
}
const girth = (given: Given) =>
  value(girthLitres({ girthCm: cm(given('C_mm')), lengthCm: cm(given('h_mm')) }))
const can: Run = given => value(cylinderLitres({ diameterCm: d(given), lengthCm: h(given) })).litres
const d = (given: Given) => given('d_cm')
const h = (given: Given) => given('h_cm')
const cartridge: Run = given => value(cylinderLitres({ diameterCm: given('d'), lengthCm: given('h') })).litres
const mat = (given: Given, widthMm: number) =>
  value(
    rolledMat({
      lengthCm: cm(given('L')),
      thicknessCm: cm(given('t')),
      widthCm: cm(widthMm),
      coreCm: cm(given('d0')),
    }),
  )

const matOf = (given: Given, squeezeShare: number) =>
  value(
    matLitres({
      lengthCm: cm(given('L')),
      thicknessCm: cm(given('t')),
      widthCm: cm(given('w')),
      coreCm: cm(given('d0')),
      squeezeShare,
    }),
  )

/** The engine's own rules are asked through a plan: a stated mass is uniform within ± 5 % of itself. */
const uniform = (halfWidth: number, id: string): ItemDocument => ({ id, massKg: halfWidth / 0.05, litres: 0 })
const known = (u: number, id: string) => uniform(u * Math.sqrt(3), id)
const engineU = (gear: ItemDocument[]) =>
  reckonSmall({ gear, water: noWater, settings: { habitCorrelation: 0 } }).need.sigmaM

const massOfTenKg = (given: Given) => {
  // In units of 0.1 mg, so that every mass stays one that a plan may have.
  const terms = [
    known(given('U_std_mg_k2') / 2 / 10, 'standard'),
    uniform(given('drift_half_mg') / 10, 'drift'),
    known(given('typeA_mg') / 10, 'comparison'),
    ...given.list('rect_half_mg').map((mg, i) => uniform(mg / 10, `air and balance ${i}`)),
  ]
  return 10 * engineU(terms)
}

/** One soft thing of a kind in a heap that takes exactly its litres, the packing model switched off. */
const kind: Run = given => {
  const [low, typical, high] = given.list('min_mode_max') as [number, number, number]
  const { need } = reckonSmall({
    gear: [{ id: 'kind', massKg: 1, litresFrom: 'kind', litresRange: { low, typical, high } }],
    water: noWater,
    settings: { softPacking: 1, personalFactorSpread: 0 },
  })
  return [need.bodyLitres, need.sigmaV]
}

const density: Run = (given, id) => {
  const fill: Fill = id.includes('down') ? 'down' : 'synthetic'
  return value(fillDensityGPerLitre({ fill, pressurePa: given('p_Pa') }))
}

const runs: Record<string, Run> = {
  'soft.down': density,
  'soft.polyester': density,
  'soft.double_pressure': given => value(squeezedShare({ fromPa: 1000, toPa: 1000 * given('p_ratio') })),
  'soft.F1853_to_hand': given =>
    value(squeezedShare({ fromPa: 1000 * given('p1_kPa'), toPa: 1000 * given('p2_kPa') })),
  'unc.box': given =>
    box(boxLitres, given.list('mm'), { halfWidthCm: cm(given('half_width_mm')) }).sigmaLitres,
  'unc.cyl_diameter': given =>
    value(
      cylinderLitres({
        diameterCm: cm(given('D_mm')),
        lengthCm: cm(given('h_mm')),
        halfWidthCm: cm(given('half_width_mm')),
      }),
    ).sigmaLitres,
  'unc.cyl_girth_V': given => girth(given).litres,
  'unc.cyl_girth_u': given => girth(given).sigmaLitres,
  'unc.boxfill': given => box(filledBoxLitres, given.list('mm')).sigmaLitres,
  'unc.GUM_4.3.7': given => engineU([uniform(given('a') * 1e6, 'copper')]) / 1e6,
  'unc.GUM_4.3.8': given => engineU([uniform((given('high') - given('low')) / 2, 'range')]),
  'unc.rect_7_10': given => engineU([uniform((given('high') - given('low')) / 2, 'range')]),
  'unc.S2_weight': massOfTenKg,
  'unc.S2_weight_U': given => given('k') * massOfTenKg(given),
  'unc.tri_': kind,
  'geo.can': can,
  'geo.cartridge_': cartridge,
  'geo.mat_litres': given => [matOf(given, 0).litres, matOf(given, 0).sigmaLitres],
  'geo.mat_soft': given => matOf(given, given('squeeze')).sigmaLitres,
  'geo.roll_diameter': given => 10 * mat(given, 510).diameterCm,
  'geo.roll_volume': given => mat(given, given('w')).rollLitres,
  'geo.slab_volume': given =>
    value(
      rolledMat({
        lengthCm: cm(given('L')),
        thicknessCm: cm(given('t')),
        widthCm: cm(given('w')),
        coreCm: 0,
      }),
    ).flatLitres,
}

describe('values of measuring, squeezing and rolling', () => {
  itReproduces(collection.values as Case[], runs, 31)

  it('left out are named with a reason', () => {
    const driven = new Set(collection.values.map(({ id }) => id))
    for (const { reason, ids } of collection.leftOut) {
      expect(reason).not.toBe('')
      expect(ids.filter(id => driven.has(id))).toEqual([])
    }
  })
})

describe('the uncertainty of a measured thing', () => {
  const length = fc.double({ min: 3, max: 90, noNaN: true })
  const half = fc.double({ min: 0, max: 2, noNaN: true })

  /** GUM eq. 10 with slopes taken numerically: what a thing moves by, reading by reading. */
  function propagated(of: (readings: number[]) => Outcome<Measured>, readings: number[], halves: number[]) {
    const squares = readings.map((reading, i) => {
      const step = reading * 1e-5
      const at = (moved: number) => value(of(readings.with(i, reading + moved))).litres
      return (((at(step) - at(-step)) / (2 * step)) * halves[i]!) ** 2 / 3
    })
    return Math.sqrt(squares.reduce((a, b) => a + b, 0))
  }
  const near = (got: number, expected: number) =>
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(1e-6 * (1e-3 + expected))

  it('is that of its readings by the law of propagation (gum-2008 eq. 10)', () => {
    fc.assert(
      fc.property(length, length, length, half, half, (x, y, z, a, b) => {
        const boxOf = ([lengthCm, widthCm, heightCm]: number[]) =>
          boxLitres({ lengthCm: lengthCm!, widthCm: widthCm!, heightCm: heightCm!, halfWidthCm: a })
        near(value(boxOf([x, y, z])).sigmaLitres, propagated(boxOf, [x, y, z], [a, a, a]))
        const filledOf = ([lengthCm, widthCm, heightCm]: number[]) =>
          filledBoxLitres({
            lengthCm: lengthCm!,
            widthCm: widthCm!,
            heightCm: heightCm!,
            baseHalfWidthCm: a,
            heightHalfWidthCm: b,
          })
        near(value(filledOf([x, y, z])).sigmaLitres, propagated(filledOf, [x, y, z], [a, a, b]))
        const canOf = ([diameterCm, lengthCm]: number[]) =>
          cylinderLitres({ diameterCm: diameterCm!, lengthCm: lengthCm!, halfWidthCm: a })
        near(value(canOf([x, y])).sigmaLitres, propagated(canOf, [x, y], [a, a]))
        const rollOf = ([girthCm, lengthCm]: number[]) =>
          girthLitres({ girthCm: girthCm!, lengthCm: lengthCm!, halfWidthCm: a })
        near(value(rollOf([x, y])).sigmaLitres, propagated(rollOf, [x, y], [a, a]))
      }),
    )
  })

  it('of a soft roll is mostly that of the hand that squeezes it (our judgement, ± 10 %)', () => {
    const roll = { girthCm: 50, lengthCm: 28 }
    const hard = value(girthLitres(roll))
    const soft = value(girthLitres({ ...roll, squeezeShare: softSqueeze }))
    expect(soft.litres).toBe(hard.litres)
    expect(soft.sigmaLitres).toBeCloseTo(Math.hypot(hard.sigmaLitres, (0.1 * hard.litres) / Math.sqrt(3)), 12)
    expect(soft.sigmaLitres).toBeGreaterThan(3 * hard.sigmaLitres)
  })

  it('by water is that of the jug alone, 0.058 L for ± 0.1 L (computed)', () => {
    const { litres, sigmaLitres } = value(displacedLitres({ riseLitres: 3 }))
    expect(litres).toBe(3)
    expect(sigmaLitres).toBeCloseTo(0.058, 3)
    expect(sigmaLitres).toBeCloseTo(readingHalfWidths.riseLitres / Math.sqrt(3), 12)
  })

  it('takes a round thing for the same litres by its girth as by its diameter', () => {
    fc.assert(
      fc.property(length, length, (diameterCm, lengthCm) => {
        const byGirth = value(girthLitres({ girthCm: Math.PI * diameterCm, lengthCm })).litres
        near(byGirth, value(cylinderLitres({ diameterCm, lengthCm })).litres)
      }),
    )
  })
})

describe('insulation that is squeezed (van-wyk-1946, constants from memory)', () => {
  it('takes less the harder it is squeezed, and down less than synthetic fill', () => {
    const litres = (fill: Fill, squeeze: keyof typeof squeezes) =>
      value(insulatedLitres({ fill, fillG: 400, shellG: 300, squeeze })).typical
    for (const fill of ['down', 'synthetic'] as const) {
      expect(litres(fill, 'laid')).toBeGreaterThan(litres(fill, 'hand'))
      expect(litres(fill, 'hand')).toBeGreaterThan(litres(fill, 'strap'))
    }
    expect(litres('down', 'hand')).toBeLessThan(litres('synthetic', 'hand'))
  })

  it('is its fill at the density of the squeeze and its shell at 300 g/L', () => {
    const { low, typical, high } = value(
      insulatedLitres({ fill: 'down', fillG: 696, shellG: 300, squeeze: 'hand' }),
    )
    expect(typical).toBeCloseTo(11, 2)
    expect([low / typical, high / typical]).toEqual([0.75, 1.25])
  })

  it('comes in a sack to the density remembered for such items, 90 to 130 g/L (from memory)', () => {
    const { typical } = value(insulatedLitres({ fill: 'down', fillG: 350, shellG: 400, squeeze: 'hand' }))
    expect(750 / typical).toBeGreaterThan(90)
    expect(750 / typical).toBeLessThan(130)
  })
})

describe('a rolled mat', () => {
  it('is as sure as its readings by the law of propagation (gum-2008 eq. 10)', () => {
    const side = fc.double({ min: 11, max: 190, noNaN: true })
    const thick = fc.double({ min: 0.3, max: 5, noNaN: true })
    fc.assert(
      fc.property(side, side, thick, thick, (lengthCm, widthCm, thicknessCm, coreCm) => {
        const readings = { lengthCm, widthCm, thicknessCm, coreCm }
        const { tapeCm } = readingHalfWidths
        const halves = {
          lengthCm: tapeCm,
          widthCm: tapeCm,
          thicknessCm: matReadings.thicknessHalfWidthCm,
          coreCm: tapeCm,
        }
        const squares = Object.entries(halves).map(([field, half]) => {
          const reading = readings[field as keyof typeof readings]
          const step = reading * 1e-5
          const at = (moved: number) => value(matLitres({ ...readings, [field]: reading + moved })).litres
          return (((at(step) - at(-step)) / (2 * step)) * half) ** 2 / 3
        })
        const expected = Math.sqrt(squares.reduce((a, b) => a + b, 0))
        const { sigmaLitres } = value(matLitres(readings))
        expect(Math.abs(sigmaLitres - expected)).toBeLessThanOrEqual(1e-5 * expected)
      }),
    )
  })

  it('takes as roll what it takes flat, and its core', () => {
    const size = fc.double({ min: 10, max: 200, noNaN: true })
    const thick = fc.double({ min: 0.1, max: 5, noNaN: true })
    fc.assert(
      fc.property(size, size, thick, thick, (lengthCm, widthCm, thicknessCm, coreCm) => {
        const { rollLitres, flatLitres } = value(rolledMat({ lengthCm, widthCm, thicknessCm, coreCm }))
        const core = value(cylinderLitres({ diameterCm: Math.max(0.5, coreCm), lengthCm: widthCm })).litres
        if (coreCm >= 0.5) expect(rollLitres - flatLitres).toBeCloseTo(core, 6)
        else expect(rollLitres - flatLitres).toBeLessThanOrEqual(core)
      }),
    )
  })
})
