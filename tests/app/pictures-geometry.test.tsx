// Long because one geometry, tested along all its laws with shared generators.
// The geometry of the two pictures: what is drawn is what is carried, to scale, and words never lie over words.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bandLabels } from '../../src/components/graphics/band-labels'
import { edgesOf, LOAD_BANDS, layersOf } from '../../src/components/graphics/bands'
import { areaOf, fillHeight, heapOn, type Level, shapeOf } from '../../src/components/graphics/body-shape'
import { overlaps } from '../../src/components/graphics/boxes'
import { amountsOf, planCutaway } from '../../src/components/graphics/cutaway-plan'
import { cut, guessWidth, wrap } from '../../src/components/graphics/fit-text'
import { cutLabel, labelLimits } from '../../src/components/graphics/limit-labels'
import type { LoadPicture } from '../../src/components/graphics/load-picture'
import { planLoadLine } from '../../src/components/graphics/load-plan'
import { momentNear, peakOf, xsOf, yOf } from '../../src/components/graphics/route-line'
import { roundStep } from '../../src/components/graphics/scale'
import { spread } from '../../src/components/graphics/spread'
import { nameStops } from '../../src/components/graphics/stop-names'
import type { Moment, Shares } from '../../src/reckon'

const measure = guessWidth(13)
const room = (widthPx: number, emPx = 13) => ({
  widthPx,
  emPx,
  measure: guessWidth(emPx),
  measureBold: guessWidth(emPx * 1.15),
})

const nothing: Shares = { kept: 0, daily: 0, nightly: 0, spread: 0, water: 0, rubbish: 0 }

function moment(over: Partial<Omit<Moment, 'kg'>> & { kg?: Partial<Shares> }): Moment {
  const kg = { ...nothing, ...over.kg }
  const total = Object.values(kg).reduce((sum, value) => sum + value, 0)
  const plain = {
    stop: 0,
    phase: 'depart' as const,
    day: 1,
    km: 0,
    hours: 0,
    bodyLitres: 0,
    bodyKg: 0,
    loose: { kg: 0, litres: 0 },
    wantedLitres: 0,
    fullWaterKg: 0,
  }
  const volumes = { rigidLitres: 0, softLitres: 0, outsideLitres: 0, litres: nothing }
  return { ...plain, ...volumes, ...over, kg: { ...kg, total } }
}

const amount = fc.double({ min: 0, max: 20, noNaN: true })
const shares = fc.record({
  kept: amount,
  daily: amount,
  nightly: amount,
  spread: amount,
  water: amount,
  rubbish: amount,
})

/** A trip of 2 to 61 stops: departure, then reaching and leaving each stop, then the end. */
const trips = fc
  .array(fc.record({ km: fc.double({ min: 0, max: 40, noNaN: true }), arrive: shares, depart: shares }), {
    minLength: 1,
    maxLength: 60,
  })
  .map(legs => {
    const moments = [moment({ kg: legs[0]!.depart })]
    let km = 0
    legs.forEach((leg, i) => {
      km += leg.km
      moments.push(moment({ stop: i + 1, phase: 'arrive', km, day: i + 1, kg: leg.arrive }))
      if (i < legs.length - 1) moments.push(moment({ stop: i + 1, km, day: i + 2, kg: leg.depart }))
    })
    return moments
  })

const shownOf = (moments: Moment[], limits: LoadPicture['limits'] = []): LoadPicture => ({
  moments,
  stops: Array.from({ length: moments.at(-1)!.stop + 1 }, (_, i) => ({
    name: `Place number ${i}`,
    water: i % 2 ? ('sure' as const) : ('doubtful' as const),
    nights: i % 3,
    resupply: i % 5 === 0,
  })),
  limits,
  format: { kg: v => `${v.toFixed(1)} kg`, km: v => `${v.toFixed(1)} km` },
})

describe('bands', () => {
  it('stack to the total of the shares', () => {
    fc.assert(
      fc.property(shares, kg => {
        const sum = Object.values(kg).reduce((a, b) => a + b, 0)
        expect(edgesOf(kg).at(-1)).toBeCloseTo(sum, 9)
        expect(edgesOf(kg)).toHaveLength(LOAD_BANDS.length + 1)
      }),
    )
  })

  it('spread packing gaps over the layers, so that they fill exactly the litres needed', () => {
    fc.assert(
      fc.property(shares, fc.double({ min: 0.1, max: 100, noNaN: true }), (litres, bodyLitres) => {
        fc.pre(edgesOf(litres).at(-1)! > 0.001)
        const layers = layersOf(litres, bodyLitres)
        expect(edgesOf(layers).at(-1)).toBeCloseTo(bodyLitres, 6)
        expect(layers.kept * litres.water).toBeCloseTo(layers.water * litres.kept, 3)
      }),
    )
  })

  it('of nothing are nothing', () => {
    expect(layersOf(nothing, 12)).toEqual(nothing)
  })
})

describe('along the trip', () => {
  it('x follows the km, and reaching and leaving a stop share it', () => {
    const moments = [
      moment({}),
      moment({ stop: 1, km: 5 }),
      moment({ stop: 1, km: 5 }),
      moment({ stop: 2, km: 20 }),
    ]
    expect(xsOf(moments, { left: 100, right: 300 })).toEqual([100, 150, 150, 300])
  })

  it('x follows the hours where no km are known, and the stops where hours are not known either', () => {
    const hours = [moment({}), moment({ stop: 1, hours: 6 }), moment({ stop: 2, hours: 8 })]
    expect(xsOf(hours, { left: 0, right: 80 })).toEqual([0, 60, 80])
    const stops = [moment({}), moment({ stop: 1 }), moment({ stop: 1 }), moment({ stop: 2 })]
    expect(xsOf(stops, { left: 0, right: 80 })).toEqual([0, 40, 40, 80])
  })

  it('a touch left of a stop means reaching it, right of it leaving it', () => {
    const xs = [0, 50, 50, 100, 100]
    expect(momentNear(44, xs)).toBe(1)
    expect(momentNear(56, xs)).toBe(2)
    expect(momentNear(-20, xs)).toBe(0)
    expect(momentNear(90, xs)).toBe(3)
    expect(momentNear(400, xs)).toBe(4)
  })

  it('every moment can be touched unless others lie between at the same place', () => {
    fc.assert(
      fc.property(trips, moments => {
        const xs = xsOf(moments, { left: 40, right: 340 })
        xs.forEach((x, i) => {
          const alike = xs.filter(other => Math.abs(other - x) < 0.01).length
          if (alike === 1) expect(momentNear(x, xs)).toBe(i)
        })
      }),
    )
  })

  it('the peak is the earliest of the heaviest moments', () => {
    expect(peakOf([{ water: 1 }, { water: 3 }, { water: 3 }].map(kg => moment({ kg })))).toBe(1)
  })
})

describe('the load line laid out', () => {
  it('keeps every moment, and draws each edge at the height of its kg', () => {
    fc.assert(
      fc.property(trips, moments => {
        const plan = planLoadLine(shownOf(moments), room(328))
        expect(plan.xs).toHaveLength(moments.length)
        const perKg = (plan.plot.bottom - plan.plot.top) / plan.plot.topKg
        moments.forEach((m, i) => {
          expect((plan.plot.bottom - plan.ys[i]!.at(-1)!) / perKg).toBeCloseTo(m.kg.total, 6)
        })
      }),
      { numRuns: 40 },
    )
  })

  it('never lets names of stops overlap or leave the picture, at any width and text size', () => {
    fc.assert(
      fc.property(
        trips,
        fc.integer({ min: 150, max: 1200 }),
        fc.constantFrom(12, 13, 26),
        (moments, width, em) => {
          const space = room(width, em)
          const { names } = planLoadLine(shownOf(moments), space).strip
          expect(names.length).toBeGreaterThan(0)
          for (const row of [0, 1]) {
            const spans = names
              .filter(name => name.row === row)
              .map(({ x, text }) => [x - space.measure(text) / 2, x + space.measure(text) / 2] as const)
              .sort((a, b) => a[0] - b[0])
            spans.forEach(([from, to], i) => {
              expect(from).toBeGreaterThanOrEqual(-0.1)
              expect(to).toBeLessThanOrEqual(width + 0.1)
              if (i > 0) expect(from).toBeGreaterThan(spans[i - 1]![1])
            })
          }
          for (const second of names.filter(name => name.row === 1))
            for (const { x, text, row } of names)
              if (row === 0) expect(Math.abs(second.at - x)).toBeGreaterThan(space.measure(text) / 2)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('names the peak in words, and cuts only the name when the room is small', () => {
    const moments = [
      moment({ kg: { kept: 14.7 } }),
      moment({ stop: 1, phase: 'arrive', km: 9, kg: { kept: 14 } }),
    ]
    const shown = shownOf(moments)
    expect(planLoadLine(shown, room(800)).peak.lines).toEqual([
      '14.7 kg when you leave \u2068Place number 0\u2069, day 1',
    ])
    const small = planLoadLine(shown, room(240)).peak.lines.join(' ')
    expect(small).toMatch(/^14\.7 kg when you leave \u2068P.*…\u2069, day 1$/)
    expect(planLoadLine({ ...shown, isPeakTold: false }, room(240)).peak.lines).toEqual([])
  })

  it('measures few names of hundreds of stops that lie close', () => {
    let measured = 0
    const stops = Array.from({ length: 500 }, (_, i) => ({ x: i * 0.7, name: `Place ${i}`, weight: 0 }))
    const count = (text: string) => {
      measured += 1
      return measure(text)
    }
    const named = nameStops(stops, { left: 0, right: 350, widest: 100, gap: 8, measure: count })
    expect(named.length).toBeGreaterThan(3)
    expect(measured).toBeLessThan(200)
  })

  it('draws a limit at its kg and gives one far over the load a place in words only', () => {
    const moments = [
      moment({ kg: { kept: 10 } }),
      moment({ stop: 1, phase: 'arrive', km: 9, kg: { kept: 9 } }),
    ]
    const limits = [
      { label: 'near', kg: 12 },
      { label: 'far', kg: 50 },
    ]
    const plan = planLoadLine(shownOf(moments, limits), room(328))
    expect(plan.limits[0]!.y).toBeCloseTo(yOf(12, plan.plot), 6)
    expect(plan.limits[1]).toMatchObject({ y: null, text: '↑ \u2068far\u2069 50.0 kg' })
  })

  it('says that nothing is carried, instead of a peak of nothing', () => {
    const moments = [moment({}), moment({ stop: 1, phase: 'arrive' })]
    const plan = planLoadLine(shownOf(moments), room(328))
    expect(plan.peak.lines).toEqual(['Nothing is carried yet'])
    expect(plan.ys.flat().every(Number.isFinite)).toBe(true)
    expect(plan.bar).toBeNull()
  })

  it('places rules on round numbers of the unit that is shown', () => {
    const lb = 0.45359237
    const moments = [moment({ kg: { kept: 15 } }), moment({ stop: 1, phase: 'arrive', km: 9 })]
    const shown = shownOf(moments)
    const format = { ...shown.format, kg: (v: number) => `${(v / lb).toFixed(1)} lb`, unitKg: lb }
    const texts = planLoadLine({ ...shown, format }, room(328)).rules.map(rule => rule.text)
    expect(texts).toEqual(['10 lb', '20 lb', '30 lb'])
  })

  it('does without figures at the side when type is so large that they would take the room', () => {
    const moments = [moment({ kg: { kept: 15 } }), moment({ stop: 1, phase: 'arrive', km: 9 })]
    expect(planLoadLine(shownOf(moments), room(288, 26)).rules).toEqual([])
  })
})

describe('words on the picture', () => {
  it('labels of limits are cut in the pack’s name, and keep what tells set-ups apart', () => {
    const measure = guessWidth(10)
    const cutTo = (characters: number, ending: string) =>
      cutLabel({ label: `Two-way with removable frame${ending}`, ending }, characters * 6, measure)
    expect(cutTo(60, ', frame in')).toBe('Two-way with removable frame, frame in')
    expect(cutTo(20, ', frame in')).toBe('Two-wa…ame, frame in')
    expect(cutTo(20, ', frame out')).toBe('Two-wa…me, frame out')
    expect(cutTo(9, ', frame in')).toBe('Two-wa…in')
    expect(cutTo(20, '')).toBe('Two-way with r…frame')
  })

  it('labels of limits lie over no line, over no other label and not over the load', () => {
    const height = fc.double({ min: 60, max: 200, noNaN: true })
    const limit = fc.record({ y: fc.option(height), widthPx: fc.double({ min: 20, max: 260, noNaN: true }) })
    const heights = fc.array(height, { minLength: 2, maxLength: 20 })
    fc.assert(
      fc.property(fc.array(limit, { minLength: 1, maxLength: 3 }), heights, (limits, ys) => {
        const crest = ys.map((y, i) => [40 + ((i >> 1) / (ys.length >> 1)) * 280, y] as const)
        const labels = labelLimits(limits, { left: 40, right: 320, top: 50, linePx: 17, crest })
        labels.forEach((label, i) => {
          expect(label.right).toBeLessThanOrEqual(320.001)
          for (const { y } of limits) if (y !== null) expect(y <= label.top || y >= label.bottom).toBe(true)
          for (const other of labels.slice(0, i)) expect(overlaps(label, other)).toBe(false)
          for (const [x, y] of crest)
            if (x > label.left && x < label.right) expect(y).toBeGreaterThanOrEqual(label.bottom)
        })
      }),
    )
  })

  it('a limit is named on its own line where the load leaves room, and above the load with a leader where not', () => {
    const around = { left: 40, right: 320, top: 50, linePx: 17 }
    const low = [[40, 150] as const, [320, 150] as const]
    const [near] = labelLimits([{ y: 100, widthPx: 80 }], { ...around, crest: low })
    expect(near).toMatchObject({ right: 320, bottom: 97, isApart: false })
    const [far] = labelLimits([{ y: 180, widthPx: 80 }], { ...around, crest: low })
    expect(far).toMatchObject({ right: 320, bottom: 147, isApart: true })
  })

  it('marks of a stop stand side by side where there is room, and a row a kind where not', () => {
    const rows = (stops: number) => {
      const moments = Array.from({ length: stops }, (_, i) => moment({ stop: i, km: i * 5 }))
      const shown = {
        ...shownOf(moments),
        stops: shownOf(moments).stops.map(s => ({ ...s, nights: 1, resupply: true })),
      }
      const { marks } = planLoadLine(shown, room(328)).strip
      return new Set(marks.map(mark => mark.y)).size
    }
    expect(rows(4)).toBe(1)
    expect(rows(40)).toBe(3)
  })

  it('a warning is marked where it waits, inside the picture', () => {
    const moments = [
      moment({ kg: { kept: 10 } }),
      moment({ stop: 1, phase: 'arrive', km: 9, kg: { kept: 9 } }),
      moment({ stop: 1, km: 9, kg: { kept: 12 } }),
      moment({ stop: 2, phase: 'arrive', km: 12, kg: { kept: 9 } }),
    ]
    const { warnings, xs, plot } = planLoadLine({ ...shownOf(moments), warnings: [2] }, room(328))
    expect(warnings).toHaveLength(1)
    expect(Math.abs(warnings[0]!.x - xs[2]!)).toBeLessThan(14)
    expect(warnings[0]!.y).toBeGreaterThan(plot.top)
  })

  it('labels moved apart keep their order, do not overlap and stay above the floor', () => {
    const wanted = fc.record({ at: fc.integer({ min: 0, max: 300 }), size: fc.integer({ min: 10, max: 60 }) })
    fc.assert(
      fc.property(fc.array(wanted, { maxLength: 6 }), labels => {
        labels.sort((a, b) => a.at - b.at)
        const middles = spread(labels, 320)
        labels.forEach(({ size }, i) => {
          expect(middles[i]! + size / 2).toBeLessThanOrEqual(320.001)
          if (i > 0)
            expect(middles[i]! - size / 2 - (middles[i - 1]! + labels[i - 1]!.size / 2)).toBeGreaterThan(
              -1e-6,
            )
        })
      }),
    )
  })

  it('labels with room stay where they belong', () => {
    expect(
      spread(
        [
          { at: 20, size: 10 },
          { at: 60, size: 10 },
        ],
        100,
      ),
    ).toEqual([20, 60])
  })

  it('a band is named only where it is thick enough for as long as its name', () => {
    const ys = [
      [200, 100, 100, 100, 95, 95, 20, 20],
      [200, 100, 100, 100, 95, 95, 90, 90],
    ]
    const named = (xs: number[]) =>
      bandLabels(xs, ys, { measure, emPx: 13, taken: [] }).map(({ word }) => word)
    expect(named([0, 300])).toEqual(['Gear'])
    expect(named([0, 30])).toEqual([])
  })

  it('a text is cut to its room between characters, and wrapped at spaces', () => {
    expect(cut('Larch Spring', 200, measure)).toBe('Larch Spring')
    expect(cut('Larch Spring', 60, measure)).toBe('Larch…')
    expect(cut('🏕🏕🏕🏕🏕🏕', 32, measure)).toBe('🏕🏕🏕…')
    expect(wrap('one two three', 60, measure)).toEqual(['one two', 'three'])
  })

  it('steps are 1, 2 or 5 times a power of ten, and nothing for a span of nothing', () => {
    expect([15.9, 35, 0.8, 93].map(span => roundStep(span, 4))).toEqual([5, 10, 0.2, 50])
    expect(roundStep(0, 4)).toBe(0)
  })

  it('more stops than fit are thinned by weight', () => {
    const stops = Array.from({ length: 40 }, (_, i) => ({
      x: i * 8,
      name: `Stop ${i}`,
      weight: i === 20 ? 9 : 1,
    }))
    const names = nameStops(stops, { left: 0, right: 320, widest: 90, gap: 8, measure })
    expect(names.length).toBeLessThan(12)
    expect(names.find(name => name.stop === 20)).toMatchObject({ row: 0, x: 160 })
  })
})

const areaUnder = (levels: readonly Level[]): number =>
  levels.slice(1).reduce((area, high, i) => {
    const low = levels[i]!
    return area + ((high.right - high.left + low.right - low.left) / 2) * (high.y - low.y)
  }, 0)

const packs = fc.record({
  bodyLitres: fc.double({ min: 1, max: 120, noNaN: true }),
  collarLitres: fc.double({ min: 0, max: 20, noNaN: true }),
  innerHeightCm: fc.option(fc.double({ min: 20, max: 120, noNaN: true })),
})

describe('the body to scale', () => {
  it('has the area of its litres, whatever its height', () => {
    fc.assert(
      fc.property(packs, pack => {
        const shape = shapeOf(pack)
        expect(areaUnder(shape.body)).toBeCloseTo(areaOf(pack.bodyLitres), 6)
        expect(areaUnder(shape.collar)).toBeCloseTo(areaOf(pack.collarLitres), 6)
      }),
    )
  })

  it('fills so that equal litres have equal area: in the body, in the collar and in the heap above', () => {
    fc.assert(
      fc.property(packs, fc.double({ min: 0, max: 200, noNaN: true }), (pack, litres) => {
        const shape = shapeOf(pack)
        const top = fillHeight(shape, litres)
        const levels = [...shape.body, ...shape.collar.slice(1)]
        const heap = heapOn(levels.at(-1)!, litres - pack.bodyLitres - pack.collarLitres)
        const all = [...levels, ...heap.slice(1)]
        const below = all.filter(level => level.y < top)
        const next = all.find(level => level.y >= top)
        const low = below.at(-1)
        if (low && next) {
          const part = (top - low.y) / (next.y - low.y)
          const between = (a: number, b: number) => a + part * (b - a)
          below.push({ y: top, left: between(low.left, next.left), right: between(low.right, next.right) })
        }
        expect(areaUnder(below)).toBeCloseTo(areaOf(litres), 4)
      }),
    )
  })

  it('takes a known height, and says when no pack of these litres could have it', () => {
    expect(shapeOf({ bodyLitres: 52, collarLitres: 0, innerHeightCm: 58 })).toMatchObject({
      heightCm: 58,
      heightKnown: true,
    })
    expect(shapeOf({ bodyLitres: 52, collarLitres: 0, innerHeightCm: 300 }).heightKnown).toBe(false)
    expect(shapeOf({ bodyLitres: 52, collarLitres: 0, innerHeightCm: null }).heightKnown).toBe(false)
  })
})

describe('the cutaway laid out', () => {
  const need = { bodyLitres: 48, bodyLitresSafe: 48 + 1.2816 * 2, sigmaV: 2 }
  const full = moment({ bodyLitres: 48, litres: { ...nothing, kept: 30, water: 10 } })
  const words = { brim: 'brim', in: 'holds', range: 'likely' }
  const plan = (bodyLitres: number | null, over: { collarLitres?: number; scaleLitres?: number } = {}) =>
    planCutaway(
      { bodyLitres, collarLitres: 0, innerHeightCm: null, need, moment: full, scaleLitres: 70, ...over },
      words,
      room(328),
    )!

  it('draws a litre equally large for every pack of one scale, on one floor', () => {
    const small = plan(20)
    const large = plan(70)
    expect(small.pxPerLitre).toBeCloseTo(large.pxPerLitre, 9)
    expect(small.floorY).toBeCloseTo(large.floorY, 9)
    const px2 = areaUnder(small.shape.body) * small.scale ** 2
    expect(px2 / small.pxPerLitre).toBeCloseTo(20, 6)
  })

  it('heaps what does not fit above the brim, and nothing where all fits', () => {
    expect(plan(40).outlines.heap).not.toBe('')
    expect(plan(52).outlines.heap).toBe('')
    expect(plan(40, { collarLitres: 10 }).outlines.heap).toBe('')
  })

  it('puts the range about the level of the fullest moment', () => {
    const { range, levelY } = plan(52)
    expect(range.top).toBeLessThan(levelY)
    expect(range.bottom).toBeGreaterThan(levelY)
  })

  it('draws the needed body where there is no pack, and nothing where there is neither', () => {
    expect(plan(null).shape.body.at(-1)!.y).toBeCloseTo(plan(need.bodyLitresSafe).shape.heightCm, 9)
    const none = { bodyLitres: 0, bodyLitresSafe: 0, sigmaV: 0 }
    const empty = { bodyLitres: null, collarLitres: 0, innerHeightCm: null, scaleLitres: 0 }
    expect(planCutaway({ ...empty, need: none, moment: moment({}) }, words, room(328))).toBeNull()
  })

  it('counts what lies over the brim and what the collar does not take', () => {
    const amounts = amountsOf({
      bodyLitres: 40,
      collarLitres: 5,
      innerHeightCm: null,
      need,
      moment: full,
      scaleLitres: 70,
    })
    expect(amounts).toMatchObject({ overBrimLitres: 8, overCollarLitres: 3 })
    expect(amounts.lowLitres).toBeCloseTo(48 - 1.2816 * 2, 9)
    expect(amounts.highLitres).toBe(need.bodyLitresSafe)
  })
})
