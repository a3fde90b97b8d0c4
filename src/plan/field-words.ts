// What a field path is called when a message or an undo step speaks of it: the thing, and the field in words. The first
// page needs them, and so they stand apart from the rows of the fields; that each of those has a word is checked.

import { capital } from '../units'
import { shortName } from './clean-words'
import type { Draft } from './draft'
import { fieldAt, fieldPath, pathParts } from './field-path'
import type { FieldName } from './fields'

const WORDS = {
  format: 'kind of file',
  version: 'version of the file',
  id: 'own mark',
  name: 'name',
  sex: 'sex',
  carrier: 'hiker',
  people: 'people',
  split: 'way to share out',
  by: 'way to share out',
  owner: 'owner',
  carriedBy: 'word on who carries it',
  shareable: 'being carried by others',
  person: 'person',
  waterShare: 'share of the water',
  setup: 'set-up',
  trip: 'trip',
  stops: 'stops',
  pace: 'pace',
  water: 'water',
  meals: 'meals',
  gear: 'gear',
  packs: 'packs',
  settings: 'settings',
  weather: 'weather',
  packings: 'packings',
  date: 'day',
  p: 'fullness',
  overLitres: 'litres over',
  pack: 'pack',
  packLitres: 'litres',
  packFrom: 'source of the litres',
  W: 'calculated litres',
  d: 'spread',
  things: 'items',
  u: 'spread',
  leg: 'way there',
  resupply: 'resupply',
  humidity: 'humidity',
  ground: 'ground',
  ration: 'way to count rations',
  wet: 'rain',
  group: 'group',
  count: 'number of pieces',
  build: 'soft or rigid',
  fuel: 'fuel',
  massKg: 'mass',
  heightCm: 'height',
  ageYears: 'age',
  loadShareLimit: 'most to carry of the body mass',
  nights: 'number of nights',
  km: 'distance',
  ascentM: 'climb',
  descentM: 'descent',
  hours: 'walking time',
  airC: 'air temperature',
  sun: 'full sun',
  shop: 'shop',
  flatKmh: 'speed on the flat',
  climbMPerH: 'climb in an hour',
  descendMPerH: 'descent in an hour',
  litresPerHour: 'water for an hour of walking',
  campLitres: 'water for a dry camp',
  reserveLitres: 'water kept in reserve',
  trustDoubtful: 'trust in doubtful water sources',
  breakfast: 'share of breakfast',
  trail: 'share of trail food',
  supper: 'share of supper',
  supperAfterEnd: 'supper after the end',
  spareDays: 'spare days of food',
  deficit: 'energy to go without',
  litres: 'litres',
  leaves: 'share left as rubbish',
  kcalPerKg: 'energy per kg',
  holdsLitres: 'room inside',
  holdsWaterLitres: 'water it holds',
  lengthCm: 'length',
  diameterCm: 'width',
  widthCm: 'width',
  depthCm: 'depth',
  use: 'way of use',
  stow: 'place in the pack',
  inside: 'container',
  resupplied: 'being bought again',
  optional: 'being optional',
  atHome: 'being left at home',
  mayRideOutside: 'carried outside',
  massFrom: 'source of the mass',
  litresFrom: 'source of the litres',
  litresRange: 'range of the litres',
  litresPerKg: 'litres for each kg',
  swaps: 'alternatives',
  low: 'least litres',
  typical: 'typical litres',
  high: 'most litres',
  boilLitres: 'water to boil',
  startC: 'water temperature before boiling',
  meltLitres: 'snow water to melt',
  altitudeM: 'altitude',
  efficiency: 'stove efficiency',
  bodyLitres: 'main-body litres',
  totalLitres: 'litres of the whole pack',
  collarLitres: 'collar litres',
  outsideLitres: 'outside litres',
  bodyFrom: 'source of the litres',
  innerHeightCm: 'inner height',
  innerWidthCm: 'inner width',
  innerDepthCm: 'inner depth',
  section: 'shape of the section',
  setups: 'set-ups',
  frame: 'word on its frame',
  kind: 'kind',
  sealed: 'being sealed',
  fabric: 'fabric',
  denier: 'denier',
  price: 'price',
  currency: 'currency',
  ratedKg: 'load rating',
  ratingCovers: 'what the rating covers',
  rigidPacking: 'packing of rigid items',
  softPacking: 'packing of soft items',
  fillEfficiency: 'filling of gaps',
  habitCorrelation: 'shared error of one habit',
  personalFactor: 'personal packing factor',
  personalFactorSpread: 'spread of the personal packing factor',
  handSpread: 'difference between hands',
  readingSpread: 'reading of how full a pack is',
  linerKg: 'mass of the liner',
  framelessCeilingKg: 'most for a frameless pack',
  roomyRatio: 'ratio from which a pack is roomy',
  packKgForEnergy: 'pack mass for the energy',
  brimKgPerLitre: 'what a full pack weighs',
  lightGramsPerLitre: 'mass a litre of a light pack',
  headroomLitres: 'room to spare',
  takes: 'pack taken',
  has: 'whether it is yours',
  starred: 'star',
  aside: 'being set aside',
  notes: 'notes',
  tags: 'tags',
  log: 'notes of the trip',
  shared: 'who carries it',
  weighedKg: 'mass on the scale',
  weighedWaterLitres: 'water on the scale',
  foodKg: 'food left',
  fuelKg: 'fuel left',
  waterLitres: 'water left',
  reached: 'time of arrival',
  setOff: 'time you left',
  foodOverKg: 'food left over',
} satisfies Record<FieldName, string> & Readonly<Record<string, string>>

const THINGS: Readonly<Record<string, string>> = {
  carrier: 'Hiker',
  people: 'People',
  split: 'Sharing out',
  pace: 'Walking pace',
  water: 'Water habits',
  meals: 'Meals',
  weather: 'Weather',
  settings: 'Settings',
  gear: 'Gear',
  packs: 'Packs',
  packings: 'Your own packing',
}

/** The name of a stop, an item, a pack or a set-up, or what stands in for it while it has none. */
export function nameOf(thing: unknown, standIn: string): string {
  const name = (thing as { name?: unknown } | null | undefined)?.name
  return typeof name === 'string' && name.trim() ? name : standIn
}

/** What stands in for the name of stop `index` of `count`. */
export const stopStandIn = (index: number, count: number): string =>
  index === 0 ? 'Start' : index === count - 1 ? 'End' : `Stop ${index + 1}`

/** The field in words: `mass`, `water for a dry camp`. A field that no plan has is quoted. */
export function fieldWord(path: string): string {
  const parts = pathParts(path)
  // What an alternative holds is no field of the item, and a note by stop or item ends in its id.
  const isNote = parts[0] === 'log' && parts.length === 3
  const field = (parts[0] === 'gear' && parts[2] === 'swaps' ? 'swaps' : parts.at(isNote ? 1 : -1)) ?? ''
  return Object.hasOwn(WORDS, field) ? WORDS[field as FieldName] : `“${shortName(field)}”`
}

/** What is noted by stop. */
const STOP_NOTES = ['left', 'reached', 'setOff']

function stopName({ trip: { stops } }: Draft, id: string): string {
  const index = stops.findIndex(stop => stop.id === id)
  return nameOf(stops[index], stopStandIn(index, stops.length))
}

/** A person's name, or what stands in for it. */
export function personName({ people = [] }: Pick<Draft, 'people'>, id: string): string {
  const at = people.findIndex(person => person.id === id)
  return nameOf(people[at], `Person ${at + 1}`)
}

/** The thing a path leads into, by name: `Food`, `Camp 2`, `Water habits`, `Big pack, as sold`. */
export function thingAt(draft: Draft, path: string): string {
  const [area = '', part = '', id = '', subId] = pathParts(path)
  if (area === 'gear' && part) return nameOf(fieldAt(draft, fieldPath(area, part)), 'Unnamed item')
  if (area === 'packs' && part) {
    const pack = nameOf(fieldAt(draft, fieldPath(area, part)), 'Unnamed pack')
    const setup = subId && fieldAt(draft, fieldPath(area, part, id, subId))
    return setup ? `${pack}, ${nameOf(setup, 'unnamed set-up')}` : pack
  }
  if (area === 'people' && part) return personName(draft, part)
  if (area === 'trip' && part === 'stops' && id) return stopName(draft, id)
  if (area === 'log' && STOP_NOTES.includes(part) && id) return stopName(draft, id)
  return THINGS[area === 'trip' ? part : area] ?? 'Trip'
}

/** A field in words with its thing: `Food, mass`. */
export const describeField = (draft: Draft, path: string): string =>
  `${thingAt(draft, path)}, ${fieldWord(path)}`

/** Lists of a plan, and what one of their entries is called. */
const ENTRIES: Readonly<Record<string, string>> = {
  people: 'Person',
  stops: 'Stop',
  gear: 'Item',
  packs: 'Pack',
  setups: 'Set-up',
}

/** A place in a plan file in words: `['gear', 3, 'massKg']` is "Item 4, mass"; the file itself is "The plan". */
export function placeInWords(path: readonly (string | number)[]): string {
  const words = path.flatMap((part, i) => {
    const next = path[i + 1]
    if (typeof part === 'number') return []
    if (typeof next === 'number' && Object.hasOwn(ENTRIES, part)) return `${ENTRIES[part]} ${next + 1}`
    if (i === path.length - 1) return fieldWord(fieldPath(part))
    return part === 'trip' || part === 'leg' ? [] : (THINGS[part] ?? fieldWord(fieldPath(part)))
  })
  const [first, ...rest] = words
  return first ? [capital(first), ...rest].join(', ') : 'The plan'
}
