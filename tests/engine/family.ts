// An invented family: two adults and a child of ten on a day's walk.

import type { ItemDocument, PartyDocument } from '../../src/plan'

const bottles = ['ada', 'bo', 'cy'].map(
  (owner): ItemDocument => ({
    id: `bottle of ${owner}`,
    name: 'Bottle',
    owner,
    massKg: 0.1,
    litres: 1,
    stow: 'outside-pocket',
    holdsWaterLitres: 2,
  }),
)

/**
 * Two hours at half a litre an hour and half a litre in reserve: 1.5 L for an adult, half of it for the child. Of a
 * day's food 0.4 are eaten on the way: 0.6 kg. Alone Ada carries 6.6 kg of 12 kg, Bo 7.6 of 16, Cy 2.35 of 5.1.
 */
export const family: PartyDocument = {
  format: 'pack-reckoner/plan',
  version: 1,
  people: [
    { id: 'ada', name: 'Ada', massKg: 60, ageYears: 38 },
    { id: 'bo', name: 'Bo', massKg: 80, ageYears: 40 },
    { id: 'cy', name: 'Cy', massKg: 34, ageYears: 10, waterShare: 0.5 },
  ],
  trip: {
    stops: [{ name: 'Car' }, { name: 'Hut', leg: { km: 8, hours: 2 } }],
    meals: { spareDays: 0 },
  },
  gear: [
    ...bottles,
    { id: 'kit of ada', name: 'Kit', owner: 'ada', massKg: 5, litres: 20 },
    { id: 'kit of bo', name: 'Kit', owner: 'bo', massKg: 6, litres: 22 },
    { id: 'kit of cy', name: 'Kit', owner: 'cy', massKg: 1.5, litres: 8 },
    { id: 'tent', name: 'Tent', massKg: 2.4, litres: 8 },
    { id: 'stove', name: 'Stove', massKg: 0.8, litres: 2 },
    { id: 'rope', name: 'Rope', massKg: 1, litres: 3 },
    { id: 'food', name: 'Food', massKg: 1.5, litres: 4, use: 'daily' },
  ],
}
