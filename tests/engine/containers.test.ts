// Many containers at once: each fills and overflows by itself, whatever the others do.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { completePlan, type ItemDocument, type StopDocument } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { planOf } from './plans'

const amount = (max: number) => fc.double({ min: max / 1000, max, noNaN: true })

/** Few uses and few shares of rubbish, so that many containers hold the same mix. */
const thing = fc.record({
  litres: amount(3),
  use: fc.constantFrom('kept', 'daily', 'nightly', 'spread'),
  leaves: fc.constantFrom(0, 0.05, 0.3),
})

const box = fc.record({
  holdsLitres: fc.double({ min: 0.01, max: 8, noNaN: true }),
  count: fc.constantFrom(0, 1, 1, 2),
  things: fc.array(thing, { maxLength: 3 }),
})

const stops: StopDocument[] = [
  { name: 'start' },
  { name: 'camp', nights: 2, leg: { km: 12 } },
  { name: 'shop', nights: 1, resupply: true, leg: { km: 9 } },
  { name: 'hut', nights: 1, meals: 'provided', leg: { km: 15 } },
  { name: 'end', leg: { km: 7 } },
]

type Box = typeof box extends fc.Arbitrary<infer T> ? T : never

function softLitresOf(boxes: Box[]): number[] {
  const bottle: ItemDocument = {
    id: 'bottle',
    massKg: 0.1,
    litres: 1,
    holdsWaterLitres: 99,
    stow: 'strapped-on',
  }
  const gear = boxes.flatMap(({ holdsLitres, count, things }, i): ItemDocument[] => [
    { id: `box ${i}`, massKg: 0.1, litres: 1, holdsLitres, count },
    ...things.map(({ use, leaves, litres }, j): ItemDocument => {
      const inside = { id: `thing ${i} ${j}`, massKg: 0.1, litres, inside: `box ${i}` }
      return use === 'kept' ? inside : { ...inside, use, leaves }
    }),
  ])
  const reckoned = reckon(
    planOf({
      format: 'pack-reckoner/plan',
      version: 1,
      carrier: { massKg: 70 },
      trip: { stops },
      gear: [bottle, ...gear],
    }),
  )
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  return reckoned.reckoning.moments.map(({ softLitres }) => softLitres)
}

describe('containers', () => {
  it('overflow together by what each overflows alone', () =>
    fc.assert(
      fc.property(fc.array(box, { minLength: 1, maxLength: 12 }), boxes => {
        const alone = boxes.map(each => softLitresOf([each]))
        softLitresOf(boxes).forEach((litres, m) => {
          expect(litres).toBeCloseTo(
            alone.reduce((sum, moments) => sum + moments[m]!, 0),
            9,
          )
        })
      }),
    ))
})

describe('a complete item', () => {
  it('has the same fields in the same order, whatever its document says', () => {
    const shapeOf = (item: ItemDocument) =>
      Object.keys(
        completePlan({
          format: 'pack-reckoner/plan',
          version: 1,
          carrier: { massKg: 70 },
          trip: { stops },
          gear: [item],
        }).gear[0]!,
      )
    const full: ItemDocument = {
      ...{ use: 'nightly', leaves: 0.1, resupplied: true, fuel: { kind: 'gas' }, mayRideOutside: false },
      ...{ name: 'Gas', count: 2, litres: 1, id: 'gas', massKg: null, stow: 'worn', optional: true },
    }
    expect(shapeOf(full)).toEqual(shapeOf({ id: 'mat', massKg: 1, litres: 2 }))
  })
})
