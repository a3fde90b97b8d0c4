// How large a figure nobody has said may be: the high end of the kind that the name tells, else the general bound.

import { expect, it } from 'vitest'
import { type Draft, settle } from '../../src/plan'
import { highEndOf, kinds } from '../../src/plan/kinds'

const draftOf = (gear: object[]): Draft =>
  ({
    carrier: { massKg: 70 },
    trip: {
      stops: [
        { id: 's', name: 'Start' },
        { id: 'e', name: 'End', leg: { km: 5 } },
      ],
    },
    gear,
    packs: [],
  }) as unknown as Draft
const boundsOf = (item: object) => settle(draftOf([{ id: 'it', ...item }])).plan.gear[0]!.unknownUpTo

it('is the high end of the kind, for its mass where that is known', () => {
  const light = highEndOf({ name: 'Quilt', massKg: 0.5 })!
  const heavy = highEndOf({ name: 'Quilt', massKg: 0.74 })!
  expect(light.litres).toBeLessThan(heavy.litres)
  expect(boundsOf({ name: 'Quilt', massKg: 0.5 })).toEqual({ massKg: null, litres: light.litres })
  expect(boundsOf({ name: 'Quilt' })).toEqual({ ...highEndOf({ name: 'Quilt' }) })
})

it('is as much larger as the container is, whose kind it is', () => {
  const { kind, holdsLitres = 0 } = kinds.find(each => each.holdsLitres)!
  const usual = boundsOf({ name: kind, massKg: 1, holdsLitres })!
  const double = boundsOf({ name: kind, massKg: 1, holdsLitres: 2 * holdsLitres })!
  expect(double.litres).toBeCloseTo(2 * usual.litres!, 9)
})

it('is 10 L and 2 kg where the name tells no kind', () => {
  expect(boundsOf({ name: 'Qwxz' })).toEqual({ massKg: 2, litres: 10 })
  expect(boundsOf({ name: 'Qwxz', litres: 1 })).toEqual({ massKg: 2, litres: null })
})

it('is nothing where all is known, or needed for nothing', () => {
  expect(boundsOf({ name: 'Qwxz', massKg: 1, litres: 1 })).toBeNull()
  expect(boundsOf({ name: 'Hat', massKg: 0.1, stow: 'worn' })).toBeNull()
})
