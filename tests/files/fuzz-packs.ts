// The door for lists of packs, tried with real ones that were changed.

import fc from 'fast-check'
import demo from '../../data/demo-plan.json'
import { givenPacks, readPacks } from '../../src/files/pack-list'
import { emptyDraft, fromPlanDocument, type PlanDocument, settle } from '../../src/plan'
import { type Door, expectReckons, expectWellSaid } from '../tools/doors'
import { mutatedObject } from './nasty'

const given = [
  givenPacks(fromPlanDocument(demo as unknown as PlanDocument, () => 'x').packs.slice(0, 1), {
    withNotes: true,
  }),
  {
    ...{ format: 'pack-reckoner/packs', version: 1 },
    packs: [
      {
        name: 'Big',
        notes: 'squeaks',
        tags: ['winter'],
        aside: '',
        setups: [{ massKg: 1, frame: 'framed' }],
      },
    ],
  },
]

export const packList: Door = {
  name: 'a list of packs with other values in its fields',
  property: fc.property(mutatedObject(given), value => {
    const read = readPacks(value, () => 'id')
    if (!read.ok) return expectWellSaid(read.message, JSON.stringify(value))
    expectReckons(settle({ ...emptyDraft(), packs: read.packs }).document)
  }),
}
