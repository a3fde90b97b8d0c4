// What a plan means where it says nothing. One list: the schema, the forms and the documentation read it.
// Each default says where it comes from; none is a measurement of this hiker.

import type {
  Carrier,
  Fuel,
  Item,
  Leg,
  Meals,
  Pace,
  Pack,
  Settings,
  Setup,
  Stop,
  WaterHabits,
  Weather,
} from './types'

export const PACE: Pace = { flatKmh: 4, climbMPerH: 300, descendMPerH: 500 }

export const WATER = {
  litresPerHour: 0.5,
  campLitres: 3,
  reserveLitres: 0.5,
  trustDoubtful: false,
} satisfies WaterHabits

export const MEALS: Meals = {
  breakfast: 0.25,
  trail: 0.4,
  supper: 0.35,
  supperAfterEnd: true,
  spareDays: 0.5,
  ration: 'fixed',
  deficit: 0,
}

export const SETTINGS: Settings = {
  rigidPacking: 0.75,
  softPacking: 0.95,
  fillEfficiency: 0.5,
  habitCorrelation: 0.5,
  personalFactor: 1,
  personalFactorSpread: null,
  handSpread: 0.08,
  readingSpread: 0.03,
  linerKg: 0.05,
  framelessCeilingKg: 9.07,
  roomyRatio: 1.35,
  packKgForEnergy: 1,
  lightGramsPerLitre: null,
  headroomLitres: null,
}

export const WET = true

/** Share of body mass to carry at most: stricter under 18. */
export function loadShareLimitFor(ageYears: number | null): number {
  return ageYears !== null && ageYears < 18 ? 0.15 : 0.2
}

export const CARRIER: Omit<Carrier, 'massKg' | 'loadShareLimit'> = {
  heightCm: null,
  ageYears: null,
  sex: null,
}

/** A source that nobody vouched for does not count: unstated water is none. */
export const STOP: Omit<Stop, 'name' | 'leg'> = {
  water: 'none',
  nights: 0,
  meals: 'carried',
  resupply: false,
  shop: false,
}

export const LEG: Omit<Leg, 'km'> = {
  ascentM: 0,
  descentM: 0,
  hours: null,
  airC: null,
  humidity: null,
  sun: null,
  ground: 'trail',
}

export const WEATHER: Weather = { airC: null, humidity: 0.5, sun: false }

export const FUEL: Omit<Fuel, 'kind'> = {
  boilLitres: 0,
  startC: 10,
  meltLitres: 0,
  altitudeM: 0,
  efficiency: null,
}

export const ITEM: Omit<Item, 'id' | 'massKg' | 'litres' | 'leaves' | 'resupplied'> = {
  name: '',
  group: '',
  count: 1,
  stow: 'main-body',
  build: 'soft',
  use: 'kept',
  kcalPerKg: null,
  fuel: null,
  holdsLitres: null,
  inside: null,
  holdsWaterLitres: 0,
  lengthCm: null,
  diameterCm: null,
  widthCm: null,
  depthCm: null,
  optional: false,
  mayRideOutside: null,
  massFrom: 'stated',
  litresFrom: 'guess',
  litresRange: null,
  unknownUpTo: null,
}

/** Packaging stays: 5 % of eaten food by mass and litres (common practice, no source). */
export const leavesFor = (use: Item['use']): number => (use === 'daily' ? 0.05 : 0)
export const resuppliedFor = (use: Item['use']): boolean => use === 'daily'

export const PACK: Omit<Pack, 'name' | 'bodyLitres' | 'setups'> = {
  collarLitres: 0,
  outsideLitres: null,
  bodyFrom: 'stated',
  sealed: false,
  fabric: null,
  denier: null,
  price: null,
  currency: null,
  innerHeightCm: null,
  innerWidthCm: null,
  innerDepthCm: null,
  section: 'ellipse',
}

export const SETUP: Omit<Setup, 'name' | 'massKg' | 'frame'> = {
  ratedKg: null,
  ratingCovers: 'contents-and-pack',
}

/** Where a default comes from, for the screens: ours, or the trade's without a source, or a published rule. */
export const DEFAULT_ORIGINS = {
  pace: 'DIN 33466, by third-party copy',
  litresPerHour: 'common practice, no source',
  campLitres: 'common practice, no source',
  reserveLitres: 'our judgement',
  meals: 'our judgement',
  loadShareLimit: 'common practice, no source',
  commonShare: 'common practice, no source',
  framelessCeilingKg: 'common practice, no source',
  roomyRatio: 'our judgement',
  packing: 'our judgement inside published ranges',
  handSpread: 'our judgement',
  linerKg: 'common practice, no source',
  leaves: 'common practice, no source',
  humidity: 'our judgement',
  fuel: 'our judgement',
  packKgForEnergy: 'our judgement',
  section: 'our judgement, as soft sides round out',
} as const
