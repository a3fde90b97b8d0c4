// The rows of an item, its fuel and its range of litres.

import type * as types from '../types'
import { JUDGEMENT, PRACTICE } from './origins'
import { amount, choice, named, part, type RowsFor, text, truth } from './rows'

export const fuel = {
  kind: choice(
    {
      gas: 'Gas',
      'white-gas': 'White gas',
      ethanol: 'Alcohol (ethanol)',
      methanol: ['Methanol (poisonous)', 'methanol'],
      tablet: 'Solid tablets',
    },
    { need: true, label: 'Kind', opens: true, column: { name: 'fuel', label: 'Fuel' } },
  ),
  boilLitres: amount('volume', 0, 50, 'L', {
    usual: 0,
    label: 'Water brought to the boil',
    column: { name: 'boiled', label: 'Water boiled a night' },
  }),
  startC: amount('temperature', 0, 60, '°C', {
    usual: 10,
    origin: JUDGEMENT,
    label: 'Water starts at',
    column: { name: 'startC' },
  }),
  meltLitres: amount('volume', 0, 50, 'L', {
    usual: 0,
    label: 'Water melted from snow',
    column: { name: 'melted', label: 'Snow melted a night' },
  }),
  altitudeM: amount('climb', -500, 9000, 'm', {
    usual: 0,
    label: 'Altitude',
    column: { name: 'altitude', label: 'Altitude of the stove', unit: 'm' },
  }),
  efficiency: amount('share', 0.05, 0.95, 'as a share of 1', {
    label: 'Heat that reaches the water',
    hint: 'Empty: 45 %, tablets 35 % (our judgement).',
    column: { name: 'efficiency' },
  }),
} satisfies RowsFor<types.Fuel>

/** The litres of one piece. */
export const litres = amount('volume', 0, 500, 'L', { need: true })

const litresRange = {
  low: { ...litres, label: 'At least', column: { name: 'least', label: 'Least litres' } },
  typical: { ...litres, label: 'Typically', column: { name: 'typical', label: 'Typical litres' } },
  high: { ...litres, label: 'At most', column: { name: 'most', label: 'Most litres' } },
} as const satisfies RowsFor<types.LitresRange>

export const litresFrom = choice(
  {
    filled: 'Measured by filling',
    dimensions: 'From its dimensions',
    stated: 'Stated',
    guess: 'A guess',
    kind: ['From its kind', 'from its kind', 'typical of its kind'],
  },
  { usual: 'guess', label: 'The litres are', column: { name: 'litresFrom' } },
)

export const item = {
  id: text(named),
  name: text({
    usual: '',
    label: 'Name',
    column: {
      name: 'name',
      heading: /^(?:items?|item name|names?|things?|gear|article|what|description|product)\b/,
    },
  }),
  group: text({
    usual: '',
    label: 'Group',
    column: { name: 'group', heading: /^(?:groups?|category|section|type|class)\b/ },
  }),
  count: amount('count', 0, 1000, 'pieces', {
    whole: true,
    usual: 1,
    label: 'How many',
    told: 'how many',
    column: {
      name: 'count',
      heading: /^(?:count|qty|quantity|number|pieces|pcs|how many|no|amount|#)(?:$|\W)/,
    },
  }),
  massKg: amount('mass', 0, 200, 'kg', {
    need: true,
    nullable: true,
    fine: true,
    label: 'Mass',
    column: {
      name: 'mass',
      label: 'Mass, each',
      heading: /\b(?:mass|weight|wt|weighs?)\b|^(?:grams?|g|kg|oz|ounces?|lbs?|pounds?)$/,
    },
  }),
  litres: amount('volume', litres.min, litres.max, litres.unit, {
    nullable: true,
    depends: true,
    label: 'Packed volume',
    column: {
      name: 'litres',
      label: 'Packed volume, each',
      heading: /\b(?:volume|vol|litres?|liters?|bulk)\b|^(?:l|ml|cu in)$/,
    },
  }),
  stow: choice(
    {
      'main-body': 'Main body',
      'outside-pocket': 'Pocket',
      'strapped-on': 'Strapped on',
      worn: ['Worn, in hand', 'worn'],
    },
    {
      usual: 'main-body',
      label: 'Where you carry it',
      told: 'place',
      column: { name: 'place', heading: /^(?:place|where|location|stowed?|pocket)\b/ },
    },
  ),
  build: choice(
    { soft: ['Soft, fills gaps', 'soft'], rigid: 'Rigid' },
    {
      usual: 'soft',
      label: 'Soft or rigid?',
      told: 'whether it gives way',
      column: { name: 'build', label: 'Build', heading: /^(?:build|soft|rigid|stiff)\b/ },
    },
  ),
  use: choice(
    {
      kept: 'Not used up',
      daily: ['Daily (food)', 'daily'],
      nightly: ['Nightly (fuel)', 'nightly'],
      spread: 'Over the trip',
    },
    { usual: 'kept', label: 'Used up', column: { name: 'use', heading: /^(?:use|used|usage|consum\w+)\b/ } },
  ),
  leaves: amount('share', 0, 1, 'of what is used', {
    depends: true,
    origin: PRACTICE,
    label: 'Stays as rubbish',
    column: { name: 'leaves' },
  }),
  resupplied: truth({
    depends: true,
    label: 'Bought again at each resupply',
    column: { name: 'resupplied' },
  }),
  kcalPerKg: amount('energyDensity', 0, 9500, 'kcal/kg', {
    label: 'Energy',
    hint: 'Printed on the packet. Needed for rations by energy.',
    column: {
      name: 'kcal',
      unit: 'kcal/100 g',
      heading: /\b(?:kcal|calories|energy|kj)\b.*(?:\/|per|\bin\b).*(?:g|oz|kg)\b/,
    },
  }),
  fuel: part(fuel),
  holdsLitres: amount('volume', 0.01, 500, 'L', {
    label: 'Holds items, each',
    hint: 'The inner room of a hard container.',
    column: { name: 'holdsLitres', label: 'Holds items', heading: /^holds things$/ },
  }),
  inside: text({ filled: true, label: 'Carried inside' }),
  holdsWaterLitres: amount('volume', 0, 100, 'L', {
    usual: 0,
    tacit: true,
    label: 'Holds water, each',
    column: { name: 'holdsWater', label: 'Holds water', heading: /\bcapacity\b/ },
  }),
  lengthCm: amount('length', 0, 500, 'cm', { label: 'Length', column: { name: 'length' } }),
  diameterCm: amount('length', 0, 200, 'cm', {
    label: 'Across',
    column: { name: 'across', heading: /\bdiameter\b/ },
  }),
  // A box's width is no diameter: a thing "across" is taken to be round.
  widthCm: amount('length', 0, 200, 'cm', {
    label: 'Width',
    column: { name: 'width', heading: /\bwidth\b/ },
  }),
  depthCm: amount('length', 0, 200, 'cm', {
    label: 'Depth',
    column: { name: 'depth', heading: /\bdepth\b/ },
  }),
  optional: truth({
    usual: false,
    label: 'Could stay at home',
    hint: 'It is then named first where something has to stay.',
    column: { name: 'optional', heading: /^optional\b/ },
  }),
  atHome: truth({
    usual: false,
    label: 'Left at home',
    hint: 'It stays on the list and counts nowhere.',
    column: { name: 'atHome', heading: /^(?:left )?(?:at )?home\b/ },
  }),
  mayRideOutside: truth({
    label: 'May be carried outside?',
    hint: 'Not said: soft items may, and long slim ones.',
    column: { name: 'mayRideOutside', label: 'May be carried outside', heading: /^may ride outside$/ },
  }),
  owner: text({ filled: true, label: 'Whose it is' }),
  carriedBy: text({ filled: true, label: 'Who carries it' }),
  shareable: truth({ usual: false, label: 'Others may carry it' }),
  massFrom: choice(
    { scale: 'Weighed', stated: 'Stated', guess: 'A guess' },
    { usual: 'stated', label: 'The mass is', column: { name: 'massFrom' } },
  ),
  litresFrom,
  litresRange: part(litresRange),
} satisfies RowsFor<Omit<types.Item, 'unknownUpTo'>>
