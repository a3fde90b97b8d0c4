// What a column of a table may hold: one list, read by the guess, the reader, the writer and the screen alike. The words
// by which headings are known are ours. A field is written under its label, so that our own tables read back exactly.

import { LIMITS, type Limit } from '../../plan'
import type { Quantity, Unit } from '../../units'
import { CHOICES, type ChoiceWords } from './choices'

export interface Amount {
  as: 'amount'
  kind: Quantity
  limit: Limit
  /** Of bare numbers where neither heading nor cell names one; written by us in it. */
  unit: Unit
  /** The same in US customary units, where that differs. */
  us?: Unit
}

export type Reading =
  | Amount
  | { as: 'words' }
  | { as: 'truth' }
  | { as: 'choice'; words: ChoiceWords }
  | { as: 'unit' }
  | { as: 'day' }

interface Field {
  label: string
  reading: Reading
  /** Where it stands in an item, or in a thing of the shelf. Without it, the field is read and never written. */
  path?: readonly [string, string?]
  /** Headings that mean it, besides its label. */
  heading?: RegExp
  /** Only the shelf keeps it. */
  shelf?: true
}

const amount = (kind: Quantity, limit: Limit, unit: Unit, us?: Unit): Amount => ({
  as: 'amount',
  kind,
  limit,
  unit,
  ...(us && { us }),
})
const litres = (limit: Limit) => amount('volume', limit, 'L')
const mass = amount('mass', LIMITS.item.massKg, 'g', 'oz')
const words: Reading = { as: 'words' }
const truth: Reading = { as: 'truth' }
const choice = (name: keyof typeof CHOICES): Reading => ({ as: 'choice', words: CHOICES[name] })

export type FieldName =
  | 'name'
  | 'group'
  | 'count'
  | 'mass'
  | 'massOfAll'
  | 'massUnit'
  | 'litres'
  | 'place'
  | 'worn'
  | 'build'
  | 'use'
  | 'leaves'
  | 'resupplied'
  | 'kcal'
  | 'kcalEach'
  | 'massFrom'
  | 'litresFrom'
  | 'least'
  | 'typical'
  | 'most'
  | 'holdsLitres'
  | 'inside'
  | 'holdsWater'
  | 'length'
  | 'across'
  | 'width'
  | 'depth'
  | 'optional'
  | 'mayRideOutside'
  | 'fuel'
  | 'boiled'
  | 'melted'
  | 'startC'
  | 'altitude'
  | 'efficiency'
  | 'note'
  | 'weighedOn'
  | 'retired'

/** In the order in which a table of ours has them. */
export const FIELDS: Readonly<Record<FieldName, Field>> = {
  name: {
    label: 'Name',
    reading: words,
    path: ['name'],
    heading: /^(?:items?|item name|names?|things?|gear|article|what|description|product)\b/,
  },
  group: {
    label: 'Group',
    reading: words,
    path: ['group'],
    heading: /^(?:groups?|category|section|type|class)\b/,
  },
  count: {
    label: 'How many',
    reading: amount('count', LIMITS.item.count, 'x'),
    path: ['count'],
    heading: /^(?:count|qty|quantity|number|pieces|pcs|how many|no|amount|#)(?:$|\W)/,
  },
  mass: {
    label: 'Mass, each',
    reading: mass,
    path: ['massKg'],
    heading: /\b(?:mass|weight|wt|weighs?)\b|^(?:grams?|g|kg|oz|ounces?|lbs?|pounds?)$/,
  },
  massOfAll: {
    label: 'Mass of all pieces',
    reading: mass,
    heading:
      /\b(?:total|sum|all|altogether|extended)\b.*\b(?:mass|weight|wt)\b|\b(?:mass|weight|wt)\b.*\b(?:total|sum|all|altogether)\b/,
  },
  massUnit: { label: 'Unit of the mass', reading: { as: 'unit' }, heading: /^(?:unit|uom|units)$/ },
  litres: {
    label: 'Packed volume, each',
    reading: litres(LIMITS.item.litres),
    path: ['litres'],
    heading: /\b(?:volume|vol|litres?|liters?|bulk)\b|^(?:l|ml|cu in)$/,
  },
  place: {
    label: 'Where it rides',
    reading: choice('place'),
    path: ['stow'],
    heading: /^(?:place|where|location|stowed?|pocket)\b/,
  },
  worn: { label: 'Worn', reading: truth, heading: /^(?:worn|wearing|on me)\b/ },
  build: {
    label: 'Build',
    reading: choice('build'),
    path: ['build'],
    heading: /^(?:build|soft|rigid|stiff)\b/,
  },
  use: {
    label: 'Used up',
    reading: choice('use'),
    path: ['use'],
    heading: /^(?:use|used|usage|consum\w+)\b/,
  },
  leaves: { label: 'Stays as rubbish', reading: amount('share', LIMITS.item.leaves, '%'), path: ['leaves'] },
  resupplied: { label: 'Bought again at each resupply', reading: truth, path: ['resupplied'] },
  kcal: {
    label: 'Energy',
    reading: amount('energyDensity', LIMITS.item.kcalPerKg, 'kcal/100 g'),
    path: ['kcalPerKg'],
    heading: /\b(?:kcal|calories|energy|kj)\b.*(?:\/|per|\bin\b).*(?:g|oz|kg)\b/,
  },
  kcalEach: {
    label: 'Energy of one piece, kcal',
    reading: amount('number', { min: 0, max: 1_000_000, unit: 'kcal' }, ''),
    heading: /\b(?:kcal|calories|cals?|energy)\b/,
  },
  massFrom: { label: 'The mass is', reading: choice('massFrom'), path: ['massFrom'] },
  litresFrom: { label: 'The litres are', reading: choice('litresFrom'), path: ['litresFrom'] },
  least: { label: 'Least litres', reading: litres(LIMITS.item.litres), path: ['litresRange', 'low'] },
  typical: { label: 'Typical litres', reading: litres(LIMITS.item.litres), path: ['litresRange', 'typical'] },
  most: { label: 'Most litres', reading: litres(LIMITS.item.litres), path: ['litresRange', 'high'] },
  holdsLitres: { label: 'Holds things', reading: litres(LIMITS.item.holdsLitres), path: ['holdsLitres'] },
  inside: { label: 'Rides inside', reading: words, heading: /^(?:inside|in)$/ },
  holdsWater: {
    label: 'Holds water',
    reading: litres(LIMITS.item.holdsWaterLitres),
    path: ['holdsWaterLitres'],
    heading: /\bcapacity\b/,
  },
  length: {
    label: 'Length',
    reading: amount('length', LIMITS.item.lengthCm, 'cm', 'in'),
    path: ['lengthCm'],
  },
  across: {
    label: 'Across',
    reading: amount('length', LIMITS.item.diameterCm, 'cm', 'in'),
    path: ['diameterCm'],
    heading: /\bdiameter\b/,
  },
  // A box's width is no diameter: a thing "across" is taken to be round.
  width: {
    label: 'Width',
    reading: amount('length', LIMITS.item.widthCm, 'cm', 'in'),
    path: ['widthCm'],
    heading: /\bwidth\b/,
  },
  depth: {
    label: 'Depth',
    reading: amount('length', LIMITS.item.depthCm, 'cm', 'in'),
    path: ['depthCm'],
    heading: /\bdepth\b/,
  },
  optional: { label: 'Could stay at home', reading: truth, path: ['optional'], heading: /^optional\b/ },
  mayRideOutside: { label: 'May ride outside', reading: truth, path: ['mayRideOutside'] },
  fuel: { label: 'Fuel', reading: choice('fuel'), path: ['fuel', 'kind'] },
  boiled: {
    label: 'Water boiled a night',
    reading: litres(LIMITS.fuel.boilLitres),
    path: ['fuel', 'boilLitres'],
  },
  melted: {
    label: 'Snow melted a night',
    reading: litres(LIMITS.fuel.meltLitres),
    path: ['fuel', 'meltLitres'],
  },
  startC: {
    label: 'Water starts at',
    reading: amount('temperature', LIMITS.fuel.startC, '°C', '°F'),
    path: ['fuel', 'startC'],
  },
  altitude: {
    label: 'Altitude of the stove',
    reading: amount('climb', LIMITS.fuel.altitudeM, 'm'),
    path: ['fuel', 'altitudeM'],
  },
  efficiency: {
    label: 'Heat that reaches the water',
    reading: amount('share', LIMITS.fuel.efficiency, '%'),
    path: ['fuel', 'efficiency'],
  },
  note: { label: 'Note', reading: words, heading: /^(?:notes?|comments?|remarks?)\b/, shelf: true },
  weighedOn: { label: 'Weighed on', reading: { as: 'day' }, shelf: true },
  retired: { label: 'No longer in use', reading: truth, heading: /^retired\b/, shelf: true },
}

export const FIELD_NAMES = Object.keys(FIELDS) as FieldName[]

/** Whether a column of amounts may have a unit, and then of which kind. */
export const amountOf = (field: FieldName): Amount | null => {
  const { reading } = FIELDS[field]
  return reading.as === 'amount' ? reading : null
}
