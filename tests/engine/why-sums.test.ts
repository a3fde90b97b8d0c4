// Every reason that is a sum adds up to the figure it explains, and that figure is the Reckoning's own: over the demo,
// the worked plan and random plans. Parts stand largest first; where the shown ones do not add up, it says so.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import { completePlan, parsePlan } from '../../src/plan'
import { dryStretchesOf, reckon, remediesFor } from '../../src/reckon'
import { methods } from '../../src/report/measuring'
import { type About, type Explanation, explain, type WhyContext, type WhyPart } from '../../src/report/why'
import worked from './fixtures/worked-plan.json'
import { smallPlan } from './small-plans'
import { contextOf, near, onAnyPlan } from './why-context'

/** Words for every figure of a random trip take their time on a busy machine. */
const PATIENCE_MS = 40_000

/** Every question about a plan. */
function questions({ plan, reckoning }: WhyContext): About[] {
  const indexes = (list: readonly unknown[]) => list.map((_, i) => i)
  const named = [{ name: 'A', plan }]
  return [
    { kind: 'facts' },
    { kind: 'body-litres' },
    { kind: 'peak-load' },
    { kind: 'load-share' },
    ...indexes(reckoning.legs).flatMap((leg): About[] => [
      { kind: 'walking-time', leg },
      { kind: 'leg-energy', leg },
      { kind: 'leg-water', leg },
    ]),
    ...indexes(reckoning.days).map((day): About => ({ kind: 'day', day })),
    ...indexes(reckoning.moments).flatMap((moment): About[] => [
      { kind: 'moment-load', moment },
      { kind: 'moment-litres', moment },
    ]),
    ...reckoning.carries.map(({ stop }): About => ({ kind: 'carry', stop })),
    ...plan.gear.flatMap(({ id, fuel }): About[] =>
      fuel
        ? [
            { kind: 'fuel', item: id },
            { kind: 'cartridges', item: id },
          ]
        : [],
    ),
    ...indexes(reckoning.packs).flatMap((setup): About[] => [
      { kind: 'set-up', setup },
      { kind: 'reach', setup },
      { kind: 'bears', setup },
      { kind: 'trips', trips: named, setup },
    ]),
    ...plan.packs.map((pack): About => {
      const [setup] = pack.setups
      return { kind: 'tag', plan, known: { ...pack, setup: setup! } }
    }),
    { kind: 'asked', trips: named, packKg: null },
    { kind: 'cover', trips: named },
  ]
}

/** A sum's parts add up, and so do the parts of its parts; the largest come first. */
function addsUp({ title, parts, result }: Explanation) {
  if (!parts) return
  const sum = (list: readonly WhyPart[]) => list.reduce((total, part) => total + part.value, 0)
  near(sum(parts), result.value)
  const sizes = parts.filter(part => !part.isRest).map(part => Math.abs(part.value))
  expect(sizes, title).toEqual([...sizes].sort((a, b) => b - a))
  for (const part of parts) if (part.of?.length) near(sum(part.of), part.value)
}

/** The results under a title, by their unrounded values. */
const valuesOf = (all: readonly Explanation[], title: RegExp) =>
  all.filter(each => title.test(each.title)).map(each => each.result.value)

function holds(context: WhyContext) {
  for (const about of questions(context)) for (const each of explain(about, context)) addsUp(each)
  figuresAre(context)
  packsAre(context)
}

function figuresAre(context: WhyContext) {
  const { reckoning, plan } = context
  const { need } = reckoning
  const facts = explain({ kind: 'facts' }, context)
  const one = (title: RegExp, wanted: number) => near(valuesOf(facts, title)[0] ?? Number.NaN, wanted)
  one(/^Base weight/, need.baseKg)
  one(/^Worn/, need.wornKg)
  one(/^Room in pockets/, need.outsideLitres)
  one(/share of body mass/, need.peakLoadFullWaterKg / plan.carrier.massKg)
  if (need.waterCapacityLitres !== null) one(/^Bottles hold/, need.waterCapacityLitres)
  if (need.packedDensity !== null) one(/^Packed density/, need.packedDensity)
  reckoning.moments.forEach(({ kg, wantedLitres, bodyLitres, day }, moment) => {
    near(explain({ kind: 'moment-load', moment }, context)[0]!.result.value, kg.total + wantedLitres)
    near(explain({ kind: 'moment-litres', moment }, context)[0]!.result.value, bodyLitres)
    expect(day).toBeGreaterThan(0)
  })
  for (const { stop, needLitres } of reckoning.carries)
    near(explain({ kind: 'carry', stop }, context)[0]!.result.value, needLitres)
  reckoning.days.forEach(({ hours }, day) => {
    const [walked] = valuesOf(explain({ kind: 'day', day }, context), /^Walking time of day/)
    if (walked !== undefined) near(walked, hours)
  })
}

function packsAre(context: WhyContext) {
  const { reckoning, plan } = context
  reckoning.packs.forEach((judged, setup) => {
    const all = explain({ kind: 'set-up', setup }, context)
    const one = (title: RegExp, wanted: number | null) => {
      const values = valuesOf(all, title)
      expect(values.length, String(title)).toBe(wanted === null ? 0 : 1)
      if (wanted !== null) near(values[0]!, wanted)
    }
    one(/^Room$/, judged.bodyMarginLitres)
    // Of what is open no chance is told.
    const isOpen = judged.answer === 'cannot-tell' || reckoning.missing.some(path => path.endsWith('.litres'))
    one(/^How likely/, isOpen ? null : judged.fitChance)
    one(/^Heaviest load, /, judged.carriedKg)
    one(/^Against its rating/, judged.ratedMarginKg)
    one(/^Filled to the brim/, judged.brimLoadKg)
    one(/^Share of body mass/, judged.bodyMassShare)
    one(/^Pack mass for each litre/, judged.gramsPerLitre)
    one(/^Pack mass for each kg/, judged.gramsPerRatedKg)
    one(/^Price for each litre/, judged.pricePerLitre)
    one(/^Can carry food/, judged.reachDays)
    const { frame } = plan.packs[judged.pack]!.setups[judged.index]!
    if (frame === 'frameless') {
      const [ceiling] = valuesOf(all, /ceiling without a frame/)
      if (ceiling !== undefined) near(ceiling, judged.loadLimitKg! - judged.ratedAgainstKg)
    }
  })
}

describe('a reason adds up to its figure', () => {
  it('on the demo trip', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    holds(contextOf(completePlan(parsed.document)))
  })

  it('on the worked plan', () => {
    const parsed = parsePlan(worked)
    if (!parsed.ok) throw new Error('the worked plan is refused')
    holds(contextOf(parsed.plan))
  })

  it('on any plan', () => onAnyPlan({ ration: 'energy', litresPerHour: 'from-heat' }, holds), PATIENCE_MS)

  it('where a change makes a set-up do, and where water at a dry camp saves some', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    const plan = completePlan(parsed.document)
    const context = contextOf(plan)
    const { reckoning } = context
    let gains = 0
    reckoning.packs.forEach((judged, setup) => {
      if (judged.suffices) return
      const remedies = remediesFor(plan, reckoning, setup)
      const all = explain({ kind: 'remedies', setup, remedies }, context)
      for (const each of all) addsUp(each)
      gains += all.length
    })
    expect(gains).toBeGreaterThan(0)
    const stretches = dryStretchesOf(reckon, { plan, reckoning })
    expect(stretches.flatMap(each => each.camps).length).toBeGreaterThan(0)
    for (const { carry, camps } of stretches) {
      const all = explain({ kind: 'carry', stop: carry.stop, camps }, context)
      for (const each of all) addsUp(each)
      expect(all.slice(1).map(each => each.result.value)).toEqual(
        camps.map(camp => expect.closeTo(camp.savesCarryLitres, 9)),
      )
    }
  })
})

describe('what is found before it is part of a plan', () => {
  const context = contextOf(smallPlan({}))

  it('adds up: a day’s food by its foods, a track by its legs', () => {
    const portions = [
      { name: 'Oats', massKg: 0.15, kcal: 570, litres: 0.37 },
      { name: 'Nuts', massKg: 0.081, kcal: 490, litres: 0.14 },
    ]
    const food = explain({ kind: 'days-food', portions, packing: 1.15 }, context)
    for (const each of food) addsUp(each)
    near(valuesOf(food, /^Mass/)[0]!, 0.231)
    near(valuesOf(food, /^Energy a day/)[0]!, 1060)
    near(valuesOf(food, /^Packed/)[0]!, 1.15 * 0.51)
    near(valuesOf(food, /^Energy by mass/)[0]!, 1060 / 0.231)
    const leg = { name: 'Camp', atKm: 12, km: 12, ascentM: 700, descentM: null, hours: 4.4 }
    const pace = { flatKmh: 4, climbMPerH: 300, descendMPerH: 500 }
    const track = explain({ kind: 'track', legs: [leg, { ...leg, atKm: 20, km: 8 }], pace, days: 2 }, context)
    for (const each of track) addsUp(each)
    near(valuesOf(track, /^Way/)[0]!, 20)
    near(valuesOf(track, /^Walking/)[0]!, 8.8)
    near(valuesOf(track, /^Climb/)[0]!, 1400)
  })

  it('is the volume of what was measured, by every way of measuring', () => {
    const readings = {
      lengthCm: 30,
      widthCm: 20,
      heightCm: 10,
      diameterCm: 10,
      girthCm: 31.4,
      riseLitres: 2,
      thicknessCm: 2,
      coreCm: 3,
    }
    for (const method of methods) {
      const outcome = method.measure(readings, { soft: true })
      if (!outcome.ok) throw new Error(`${method.id}: ${outcome.field}`)
      const [measured] = explain({ kind: 'measured', method, readings, soft: true }, context)
      expect(measured!.result.value, method.id).toBe(outcome.value.litres)
      expect(measured!.equation, method.id).not.toBe(method.label)
    }
  })
})

describe('a sum whose shown parts do not add up', () => {
  it('says so, and one whose shown parts do says nothing', () => {
    const of = (masses: number[]) => {
      const gear = masses.map((massKg, i) => ({ id: `g${i}`, massKg, litres: 0 }))
      const context = contextOf(smallPlan({ gear, water: { litresPerHour: 0, reserveLitres: 0 } }))
      return explain({ kind: 'base-weight' }, context)[0]!.rounded
    }
    expect(of([0.1, 0.2])).toBe(false)
    expect(of([0.101, 0.202, 0.303])).toBe(true)
  })

  it.each(['metric', 'us'] as const)(
    'says it wherever the shown digits do not add up, in %s units',
    system => {
      const parsed = parsePlan(demo)
      if (!parsed.ok) throw new Error('the demo plan is refused')
      const context = contextOf(completePlan(parsed.document), undefined, system)
      const unitOf = (text: string) => text.replace(/[\d.,−\s]/g, '')
      const digitsOf = (text: string) => Number(text.replace(/[^\d.]/g, '')) * (text.startsWith('−') ? -1 : 1)
      let seen = 0
      for (const about of questions(context))
        for (const { parts, rounded, result, title } of explain(about, context)) {
          const units = new Set([...(parts ?? []), result].map(({ text }) => unitOf(text)))
          if (!parts || units.size > 1 || parts.some(part => part.text.includes('min'))) continue
          seen += 1
          const sum = parts.reduce((total, { text }) => total + digitsOf(text), 0)
          expect(rounded ?? false, title).toBe(Math.abs(sum - digitsOf(result.text)) > 1e-6)
        }
      expect(seen).toBeGreaterThan(20)
    },
  )

  it('names twelve things and puts the rest in one part', () => {
    const gear = Array.from({ length: 40 }, (_, i) => ({ id: `g${i}`, massKg: 0.1 + i / 1000, litres: 0 }))
    const [base] = explain({ kind: 'base-weight' }, contextOf(smallPlan({ gear })))
    expect(base!.parts).toHaveLength(13)
    expect(base!.parts!.some(part => part.label === '28 lesser items')).toBe(true)
  })
})
