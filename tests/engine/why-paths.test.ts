// Where the answers to "why?" lead: the path of an input is that of the very field its figure comes from, whatever the
// ids are.

import { describe, expect, it } from 'vitest'
import { fieldPath, type ItemDocument } from '../../src/plan'
import { explain, type WhyContext } from '../../src/report/why'
import { smallPlan } from './small-plans'
import { contextOf } from './why-context'

const bottle: ItemDocument = {
  id: 'my bottle 100%',
  massKg: 0.1,
  litres: 1,
  build: 'rigid',
  holdsWaterLitres: 1,
  lengthCm: 25,
  diameterCm: 8,
}

/** The paths under one title among the facts. */
function pathsUnder(title: string, context: WhyContext) {
  const found = explain({ kind: 'facts' }, context).find(each => each.title === title)
  return [...(found?.inputs ?? []), ...(found?.parts ?? [])].map(({ path }) => path)
}

describe('the path of a fact', () => {
  const context = contextOf(smallPlan({ gear: [bottle] }))

  it.each([
    ['Bottles hold', 'holdsWaterLitres'],
    ['Longest rigid item inside', 'lengthCm'],
    ['Widest rigid item inside', 'diameterCm'],
  ])('“%s” is that of the field, for an id with a blank in it too', (title, field) => {
    expect(pathsUnder(title, context)).toEqual([`gear/my bottle 100%/${field}`])
  })

  it('leads to the rigid thing in the main body, not to another of the same size', () => {
    const tent: ItemDocument = { id: 'tent', massKg: 1, litres: 4, build: 'soft', lengthCm: 25 }
    const pole: ItemDocument = { ...bottle, id: 'pole', stow: 'strapped-on' }
    const both = contextOf(smallPlan({ gear: [tent, pole, bottle] }))
    expect(pathsUnder('Longest rigid item inside', both)).toEqual(['gear/my bottle 100%/lengthCm'])
  })
})

describe('the path of the air on a leg', () => {
  it('is the leg’s own where it says something, else that of the trip’s weather', () => {
    const plan = smallPlan({
      stops: [{ name: 'Start' }, { name: 'Pass', leg: { km: 8, airC: 30 } }, { name: 'End', leg: { km: 8 } }],
      weather: { humidity: 0.3 },
      water: { litresPerHour: 'from-heat' },
    })
    const context = { ...contextOf(plan), stopIds: ['a', 'the pass/2', 'c'] }
    const pathsOf = (leg: number) =>
      explain({ kind: 'leg-water', leg }, context).flatMap(({ inputs }) =>
        inputs.flatMap(({ label, path }) => (/^(Air|Humidity|Full sun)$/.test(label) ? [path] : [])),
      )
    const trip = (field: string) => fieldPath('trip', 'weather', field)
    const own = fieldPath('trip', 'stops', 'the pass/2', 'leg', 'airC')
    expect(pathsOf(0)).toEqual([trip('sun'), own, trip('humidity')])
    expect(pathsOf(1)).toEqual([trip('sun'), trip('airC'), trip('humidity')])
    const [carry] = explain({ kind: 'carry', stop: 0 }, context)
    expect(
      carry!
        .parts!.map(({ path }) => path)
        .filter(path => path?.endsWith('airC'))
        .sort(),
    ).toEqual([own, trip('airC')].sort())
  })
})

describe('the path of a dry night', () => {
  it('is that of the camp’s water, for an id with a blank in it too', () => {
    const plan = smallPlan({
      stops: [
        { name: 'Start' },
        { name: 'Ridge', water: 'none', nights: 1, leg: { km: 8 } },
        { name: 'End', leg: { km: 8 } },
      ],
    })
    const context = { ...contextOf(plan), stopIds: ['a', 'the ridge/2', 'c'] }
    const [carry] = explain({ kind: 'carry', stop: 0 }, context)
    const night = carry?.parts?.find(({ label }) => label === 'a dry night at Ridge')
    expect(night?.path).toBe(fieldPath('trip', 'stops', 'the ridge/2', 'water'))
  })
})
