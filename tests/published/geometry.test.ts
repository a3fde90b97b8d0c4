// Pieces in a pack's section, the place of the load, torso length: values computed elsewhere, and searches that find the
// same without the formulas. Standing of each value stands in geometry.values.json.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  balancingLeanDeg,
  ellipsePerimeterCm,
  fitRoom,
  hipMomentNm,
  inscribedRadiusCm,
  loadCentre,
  longestRodCm,
  pairDiameterCm,
  pairStands,
  roomBesideLitres,
  torsoLength,
} from '../../src/equations'
import { type Case, value } from './cases'
import { boxy, can, fit, oval } from './fit-pieces'
import collection from './geometry.values.json'
import { type Given, itReproduces, type Run } from './measured-cases'

const pieces = (given: Given) =>
  given.list('m').map((massKg, i) => ({ massKg, behindM: given.list('x')[i]!, aboveM: given.list('z')[i]! }))
const semi = (given: Given) => ({ semiMajorCm: given('a'), semiMinorCm: given('b') })
const torso =
  (sex: 'male' | 'female' | null): Run =>
  given =>
    10 * value(torsoLength({ heightCm: given('stature_mm') / 10, sex })).verticalCm

const moment: Run = given => value(hipMomentNm({ pieces: pieces(given), leanDeg: given('theta_deg') }))

/** What decides on a round piece, in an oval pack of 60 cm. */
function roomFor(given: Given, { axes }: { axes: number[] }) {
  const [innerWidthCm, innerDepthCm] = axes as [number, number]
  return value(fitRoom(can(given('d_cm'), 10), oval({ innerWidthCm, innerDepthCm })))
}

/** The size, as a multiple, at which a round piece no longer lies in the section: the index is 1 / its square. */
const lyingIndex: Run = given => {
  const [innerWidthCm, innerDepthCm] = given.list('axes_cm') as [number, number]
  // Too low to stand or lean in, at any size tried.
  const lies = (size: number) => {
    const inner = oval({ innerWidthCm, innerDepthCm, innerHeightCm: given('d_cm') })
    const verdict = fit(can(given('d_cm') * size, given('len_cm') * size), inner)
    return verdict.verdict === 'only-lying' && verdict.how === 'across'
  }
  let [low, high] = [0.74, 1]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (lies(middle)) low = middle
    else high = middle
  }
  return 1 / low ** 2
}

const runs: Record<string, Run> = {
  'geo.gap_beside_can': given => {
    const [major, minor] = given.list('axes_cm') as [number, number]
    const ellipse = { semiMajorCm: major / 2, semiMinorCm: minor / 2 }
    return value(roomBesideLitres({ ...ellipse, diameterCm: given('d_cm'), lengthCm: given('h_cm') }))
  },
  'geo.ellipse_perimeter': given => value(ellipsePerimeterCm(semi(given))),
  'geo.can_lying_index': lyingIndex,
  'geo.rod_box': given => {
    const [innerHeightCm, innerWidthCm, innerDepthCm] = given.list('cm') as [number, number, number]
    return value(longestRodCm(boxy({ innerHeightCm, innerWidthCm, innerDepthCm })))
  },
  'geo.rod_ellipse': given =>
    value(longestRodCm(oval({ innerHeightCm: given('H'), innerWidthCm: given('major') }))),
  'geo.inscribed_c': given => value(inscribedRadiusCm({ ...semi(given), offsetCm: given('c') })),
  'geo.pair_other': given => {
    const [innerWidthCm, innerDepthCm] = given.list('axes_cm') as [number, number]
    const inner = { section: 'ellipse' as const, innerWidthCm, innerDepthCm, clearanceCm: 0 }
    const stands = (otherCm: number) => value(pairStands({ ...inner, oneCm: given('one_cm'), otherCm }))
    let [low, high] = [1, 24]
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2
      if (stands(middle)) low = middle
      else high = middle
    }
    return low
  },
  'geo.girth_22': given => roomFor(given, { axes: [32, 24] }).girthCm,
  'geo.lying_room_': given => roomFor(given, { axes: given.list('axes_cm') }).lyingRoomCm,
  'geo.slant_room_': given => roomFor(given, { axes: given.list('axes_cm') }).slantRoomCm,
  'load.moment_': moment,
  'load.lean_': given =>
    value(
      balancingLeanDeg({
        bodyKg: given('body_kg'),
        heightCm: 100 * given('stature_m'),
        packKg: given('pack_kg'),
        behindM: given('x_m'),
        aboveM: given('z_m'),
      }),
    ),
  'torso.reg_M': torso('male'),
  'torso.reg_F': torso('female'),
  'torso.reg_unknown': torso(null),
}

describe('values of geometry', () => {
  itReproduces(collection.values as Case[], runs, 26)
})

describe('round things in a section, found again by searching', () => {
  const axes = fc
    .tuple(fc.double({ min: 5, max: 40, noNaN: true }), fc.double({ min: 0.25, max: 1, noNaN: true }))
    .map(([semiMajorCm, flat]) => ({ semiMajorCm, semiMinorCm: semiMajorCm * flat }))

  it('the largest circle reaches to the nearest point of the ellipse and no further', () => {
    fc.assert(
      fc.property(axes, fc.double({ min: 0, max: 1, noNaN: true }), (ellipse, share) => {
        const offsetCm = share * ellipse.semiMajorCm
        const { semiMajorCm: a, semiMinorCm: b } = ellipse
        let nearest = Infinity
        for (let i = 0; i <= 4000; i++) {
          const t = (i * Math.PI) / 4000
          nearest = Math.min(nearest, Math.hypot(a * Math.cos(t) - offsetCm, b * Math.sin(t)))
        }
        expect(Math.abs(value(inscribedRadiusCm({ ...ellipse, offsetCm })) - nearest)).toBeLessThan(1e-3)
      }),
      { numRuns: 50 },
    )
  })

  it('the perimeter is the integral along the ellipse (ramanujan-1914, from memory)', () => {
    fc.assert(
      fc.property(axes, ellipse => {
        const { semiMajorCm: a, semiMinorCm: b } = ellipse
        const steps = 2000
        let sum = 0
        for (let i = 0; i < steps; i++) {
          const t = (2 * Math.PI * i) / steps
          sum += Math.hypot(a * Math.sin(t), b * Math.cos(t))
        }
        const integral = (sum * 2 * Math.PI) / steps
        expect(value(ellipsePerimeterCm(ellipse)) / integral).toBeCloseTo(1, 5)
      }),
    )
  })

  it('two Ø 16 cm stand side by side in an oval of 32 × 24 cm, and nothing wider (computed)', () => {
    expect(value(pairDiameterCm(oval()))).toBe(16)
  })

  it('two of a pair touch each other and stay within the section', () => {
    fc.assert(
      fc.property(axes, ({ semiMajorCm, semiMinorCm }) => {
        const inner = { innerWidthCm: 2 * semiMinorCm + 3, innerDepthCm: 2 * semiMajorCm + 3 }
        const radius = value(pairDiameterCm({ section: 'ellipse', ...inner, clearanceCm: 0 })) / 2
        const ellipse = { semiMajorCm: inner.innerDepthCm / 2, semiMinorCm: inner.innerWidthCm / 2 }
        expect(value(inscribedRadiusCm({ ...ellipse, offsetCm: radius }))).toBeCloseTo(radius, 9)
      }),
    )
  })

  it('any two stand just where a search over places finds them room', () => {
    const part = fc.double({ min: 0.2, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        axes,
        part,
        part,
        fc.boolean(),
        ({ semiMajorCm: a, semiMinorCm: b }, one, other, isOval) => {
          const inner = { innerWidthCm: 2 * a, innerDepthCm: 2 * b, clearanceCm: 0 }
          fc.pre(2 * b > 3)
          const [r1, r2] = [one * b, other * b]
          const apart = isOval
            ? widestOval(a, b, r1) + widestOval(a, b, r2)
            : Math.hypot(2 * a - r1 - r2, 2 * b - r1 - r2)
          fc.pre(Math.abs(apart - r1 - r2) > 0.02)
          const pair = { ...inner, section: isOval ? ('ellipse' as const) : ('rectangle' as const) }
          expect(value(pairStands({ ...pair, oneCm: 2 * r1, otherCm: 2 * r2 }))).toBe(apart > r1 + r2)
          expect(value(pairStands({ ...pair, oneCm: 2 * r2, otherCm: 2 * r1 }))).toBe(apart > r1 + r2)
        },
      ),
      { numRuns: 60 },
    )
  })

  /** How far off the middle a circle goes, by walking along the long axis until the ellipse is nearer than its radius. */
  function widestOval(a: number, b: number, radius: number): number {
    const nearest = (offset: number) => {
      let least = Infinity
      for (let i = 0; i <= 1000; i++) {
        const t = (i * Math.PI) / 1000
        least = Math.min(least, Math.hypot(a * Math.cos(t) - offset, b * Math.sin(t)))
      }
      return least
    }
    let [low, high] = [0, a]
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2
      if (nearest(middle) >= radius) low = middle
      else high = middle
    }
    return low
  }

  it('two equal ones stand just up to the largest pair', () => {
    const section = fc.constantFrom('ellipse' as const, 'rectangle' as const)
    fc.assert(
      fc.property(axes, section, ({ semiMajorCm, semiMinorCm }, shape) => {
        const inner = {
          section: shape,
          innerWidthCm: 2 * semiMajorCm,
          innerDepthCm: 2 * semiMinorCm + 3,
          clearanceCm: 0,
        }
        const most = value(pairDiameterCm(inner))
        const stands = (cm: number) => value(pairStands({ ...inner, oneCm: cm, otherCm: cm }))
        expect([stands(most - 1e-6), stands(most + 1e-6)]).toEqual([true, false])
      }),
    )
  })

  it('two in a square stand corner to corner: 2 − √2 of its side (computed)', () => {
    const square = { section: 'rectangle' as const, innerWidthCm: 20, innerDepthCm: 20, clearanceCm: 0 }
    expect(value(pairDiameterCm(square))).toBeCloseTo(20 * (2 - Math.SQRT2), 9)
    expect(value(pairDiameterCm({ ...square, innerWidthCm: 50 }))).toBe(20)
  })
})

describe('the place of the load', () => {
  const lean = (behindM: number, aboveM: number) =>
    value(balancingLeanDeg({ bodyKg: 75, heightCm: 175, packKg: 15, behindM, aboveM }))

  it('matters about six times as much by a centimetre of depth as by one of height (computed)', () => {
    const depth = (lean(0.18, 0.3) - lean(0.12, 0.3)) / 6
    const height = (lean(0.18, 0.1) - lean(0.18, 0.3)) / 20
    expect(depth).toBeCloseTo(0.41, 2)
    expect(height).toBeCloseTo(0.06, 2)
    expect(depth / height).toBeGreaterThan(6)
  })

  it('is what its parts make of it: their moments add up to that of their centre', () => {
    const part = fc.record({
      massKg: fc.double({ min: 0.1, max: 10, noNaN: true }),
      behindM: fc.double({ min: -0.3, max: 0.5, noNaN: true }),
      aboveM: fc.double({ min: -0.2, max: 0.8, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), fc.nat(60), (parts, leanDeg) => {
        const each = parts.map(one => value(hipMomentNm({ pieces: [one], leanDeg })))
        const whole = value(hipMomentNm({ pieces: parts, leanDeg }))
        expect(each.reduce((a, b) => a + b, 0)).toBeCloseTo(whole, 9)
        const centre = value(loadCentre({ pieces: parts }))
        expect(value(hipMomentNm({ pieces: [centre], leanDeg }))).toBeCloseTo(whole, 9)
      }),
    )
  })

  it('balances: at the lean found, load and upper body have no moment left', () => {
    const leanDeg = lean(0.18, 0.3)
    const upper = { massKg: 0.678 * 75, behindM: 0, aboveM: 0.626 * 0.288 * 1.75 }
    const load = { massKg: 15, behindM: 0.18, aboveM: 0.3 }
    expect(value(hipMomentNm({ pieces: [upper, load], leanDeg }))).toBeCloseTo(0, 9)
  })

  it('of nothing is refused by the number of its parts', () => {
    expect(loadCentre({ pieces: [] })).toMatchObject({
      ok: false,
      field: 'pieces',
      limit: { min: 1 },
      got: 0,
    })
  })
})

describe('torso length from stature (ansur-2012, computed from the public data)', () => {
  it('gives the means of the survey at the means of its statures', () => {
    const mean = (heightCm: number, sex: 'male' | 'female') => value(torsoLength({ heightCm, sex }))
    expect(mean(175.62, 'male').verticalCm).toBeCloseTo(45.567, 1)
    expect(mean(162.85, 'female').verticalCm).toBeCloseTo(39.994, 1)
    expect(mean(175.62, 'male').tapeCm).toBeCloseTo(47.24, 1)
    expect(mean(162.85, 'female').tapeCm).toBeCloseTo(40.95, 1)
  })

  it('is a poor guess: about ± 4 cm for 95 in 100', () => {
    for (const sex of ['male', 'female', null] as const) {
      const { seeCm } = value(torsoLength({ heightCm: 170, sex }))
      expect(1.96 * seeCm).toBeGreaterThan(3.5)
      expect(1.96 * seeCm).toBeLessThan(4.4)
    }
  })
})
