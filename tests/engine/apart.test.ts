// Packs apart from any trip: ratios, the brim, and a figure of one's own. The ratios of twelve invented packs were worked
// out by hand, to the digits shown.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { completePack, defaults, type PackDocument } from '../../src/plan'
import { apartFigures, type Measure, measureOf } from '../../src/reckon'

const { SETTINGS } = defaults

interface Facts {
  kg: number
  body: number
  out?: number
  rated?: number
  price?: number
  frame?: 'framed' | 'frameless'
  covers?: 'contents'
  denier?: number
}

function wholePack({ kg, body, out, rated, price, frame = 'framed', covers, denier }: Facts) {
  const pack = completePack({
    name: 'A',
    bodyLitres: body,
    ...(out !== undefined && { outsideLitres: out }),
    ...(price !== undefined && { price }),
    ...(denier !== undefined && { denier }),
    setups: [
      {
        name: 'as sold',
        massKg: kg,
        frame,
        ...(rated !== undefined && { ratedKg: rated }),
        ...(covers && { ratingCovers: covers }),
      },
    ],
  } as PackDocument)
  return [pack, pack.setups[0]!] as const
}

const figuresOf = (facts: Facts, settings = SETTINGS) => apartFigures(...wholePack(facts), settings)

describe('by hand', () => {
  it.each([
    // kg, body, pockets, rated, price → g/L, g/L with pockets, g/kg rated, price/L, price/kg rated
    [{ kg: 0.9, body: 45, out: 5, rated: 12, price: 180 }, [20, 18, 75, 4, 15]],
    [{ kg: 1.5, body: 50, out: 10, rated: 20, price: 250 }, [30, 25, 75, 5, 12.5]],
    [{ kg: 0.6, body: 40, out: 0, rated: 8, price: 120 }, [15, 15, 75, 3, 15]],
    [{ kg: 2.1, body: 70, out: 14, rated: 25, price: 210 }, [30, 25, 84, 3, 8.4]],
    [{ kg: 0.48, body: 32, out: 8, rated: 10, price: 160 }, [15, 12, 48, 5, 16]],
    [{ kg: 1.2, body: 48, out: 12, rated: 15, price: 0 }, [25, 20, 80, 0, 0]],
    [{ kg: 0.3, body: 20 }, [15, null, null, null, null]],
    [{ kg: 1, body: 50, rated: 16 }, [20, null, 62.5, null, null]],
    [{ kg: 1, body: 40, out: 10 }, [25, 20, null, null, null]],
    [{ kg: 1, body: 40, price: 100 }, [25, null, null, 2.5, null]],
    [{ kg: 0.75, body: 30, out: 7.5, price: 90 }, [25, 20, null, 3, null]],
    [{ kg: 1.8, body: 60, out: 12, rated: 18, price: 300 }, [30, 25, 100, 5, 300 / 18]],
  ] as const)('%o', (facts, [litre, total, rated, priceLitre, priceRated]) => {
    const found = figuresOf(facts)
    expect(found.gramsPerLitre).toBeCloseTo(litre, 9)
    const close = (value: number | null, expected: number | null) =>
      expected === null ? expect(value).toBeNull() : expect(value).toBeCloseTo(expected, 9)
    close(found.gramsPerTotalLitre, total)
    close(found.gramsPerRatedKg, rated)
    close(found.pricePerLitre, priceLitre)
    close(found.pricePerRatedKg, priceRated)
  })
})

describe('filled to the brim', () => {
  it('a pack weighs 0.22 kg for each litre, and itself where its rating covers it', () => {
    expect(figuresOf({ kg: 1, body: 50, rated: 12 }).brimLoadKg).toBeCloseTo(12, 12)
    expect(figuresOf({ kg: 1, body: 50, rated: 12, covers: 'contents' }).brimLoadKg).toBeCloseTo(11, 12)
  })

  it('is more than it can carry only beyond its limit, and cannot be told without one', () => {
    expect(figuresOf({ kg: 1, body: 50, rated: 12.01 }).outgrows).toBe(false)
    expect(figuresOf({ kg: 1, body: 50, rated: 11.99 }).outgrows).toBe(true)
    expect(figuresOf({ kg: 1, body: 90 })).toMatchObject({ brimLimitKg: null, outgrows: null })
  })

  // Common practice, no source.
  it('a frameless one of 50 litres is more than shoulders alone should bear', () => {
    const found = figuresOf({ kg: 0.6, body: 50, frame: 'frameless' })
    expect(found).toMatchObject({ brimLimitKg: 9.07, outgrows: true })
    expect(figuresOf({ kg: 0.6, body: 50, frame: 'frameless', rated: 7 }).brimLimitKg).toBe(7)
    expect(figuresOf({ kg: 0.4, body: 20, frame: 'frameless' }).outgrows).toBe(false)
  })

  it('grows with the litres and with what each weighs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 100, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (body, each) => {
          const at = (litres: number, brimKgPerLitre: number) =>
            figuresOf({ kg: 1, body: litres, rated: 10 }, { ...SETTINGS, brimKgPerLitre }).brimLoadKg
          expect(at(body + 1, each)).toBeGreaterThan(at(body, each))
          expect(at(body, each * 1.1)).toBeGreaterThan(at(body, each))
        },
      ),
    )
  })
})

describe('a figure of one’s own', () => {
  const measured = (measure: Measure, facts: Facts) => measureOf(measure, ...wholePack(facts))
  const facts = { kg: 0.9, body: 45, out: 5, rated: 12, price: 180, denier: 210 }

  it('multiplies its parts, each to its power', () => {
    expect(measured({ massG: 1, price: 1, bodyLitres: -1 }, facts)).toBeCloseTo(3600, 9)
    expect(measured({ totalLitres: 2, denier: -1 }, facts)).toBeCloseTo(2500 / 210, 12)
    expect(measured({ ratedKg: 1, massG: 0 }, facts)).toBe(12)
  })

  it('is not known where a part of it is not', () => {
    const { rated: _rated, out: _out, ...open } = facts
    expect(measured({ ratedKg: 1 }, open)).toBeNull()
    expect(measured({ totalLitres: -1 }, open)).toBeNull()
    expect(measured({ massG: 1, ratedKg: 0 }, open)).toBe(900)
    expect(measured({ price: -1 }, { ...facts, price: 0 })).toBeNull()
  })
})
