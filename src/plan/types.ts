// The plan as the engine reads it: every default filled in, absent things null.
// Free of any schema library, so that the engine depends on plain types alone.

export type Water = 'sure' | 'doubtful' | 'none'
export type Ground = 'paved' | 'trail' | 'rough' | 'brush' | 'sand'
export type Stow = 'main-body' | 'outside-pocket' | 'strapped-on' | 'worn'
export type Build = 'soft' | 'rigid'
export type Use = 'kept' | 'daily' | 'nightly' | 'spread'
export type MassFrom = 'scale' | 'stated' | 'guess'
export type LitresFrom = 'filled' | 'dimensions' | 'stated' | 'guess' | 'kind'
export type BodyFrom = 'test-method' | 'measured' | 'stated'
export type Frame = 'framed' | 'frameless'
export type RatingCovers = 'contents-and-pack' | 'contents'
/** What the inside of a main body looks like cut across. */
export type Section = 'ellipse' | 'rectangle'
export type FuelKind = 'gas' | 'white-gas' | 'ethanol' | 'methanol' | 'tablet'

export interface Carrier {
  massKg: number
  heightCm: number | null
  ageYears: number | null
  sex: 'female' | 'male' | null
  /** Share of body mass the hiker wants to carry at most, 0.20, or 0.15 under 18 years. */
  loadShareLimit: number
}

export interface Leg {
  km: number
  ascentM: number
  descentM: number
  /** Walking hours the hiker knows better; null: computed. */
  hours: number | null
  airC: number | null
  humidity: number
  ground: Ground
}

export interface Stop {
  name: string
  water: Water
  nights: number
  meals: 'carried' | 'provided'
  resupply: boolean
  /** Food can be bought here; changes no figure. */
  shop: boolean
  /** The leg that leads here; null at the first stop only. */
  leg: Leg | null
}

export interface Pace {
  flatKmh: number
  climbMPerH: number
  descendMPerH: number
}

export interface WaterHabits {
  litresPerHour: number | 'from-heat'
  campLitres: number
  reserveLitres: number
  trustDoubtful: boolean
}

export interface Meals {
  breakfast: number
  trail: number
  supper: number
  supperAfterEnd: boolean
  spareDays: number
  ration: 'fixed' | 'energy'
  /** Share of a day's energy the hiker accepts to go without, with `ration: 'energy'`. */
  deficit: number
}

export interface Trip {
  stops: Stop[]
  pace: Pace
  water: WaterHabits
  meals: Meals
  wet: boolean
}

export interface Fuel {
  kind: FuelKind
  boilLitres: number
  startC: number
  meltLitres: number
  altitudeM: number
  efficiency: number | null
}

/** What things of a kind take, each: the ends and the mode of a triangular distribution. low ≤ typical ≤ high. */
export interface LitresRange {
  low: number
  typical: number
  high: number
}

export interface Item {
  id: string
  name: string
  group: string
  count: number
  /** Each; a `daily` item: one full day's ration, a `nightly` one: one night. */
  massKg: number
  /** With `litresFrom: 'kind'` the mean of `litresRange`. */
  litres: number
  stow: Stow
  build: Build
  use: Use
  leaves: number
  resupplied: boolean
  kcalPerKg: number | null
  fuel: Fuel | null
  holdsLitres: number | null
  inside: string | null
  holdsWaterLitres: number
  lengthCm: number | null
  /** Across a round thing. */
  diameterCm: number | null
  /** A thing with both is a box: its other two sides. */
  widthCm: number | null
  depthCm: number | null
  optional: boolean
  /** Null: nobody said. */
  mayRideOutside: boolean | null
  massFrom: MassFrom
  litresFrom: LitresFrom
  /** With `litresFrom: 'kind'` and never else. */
  litresRange: LitresRange | null
}

export interface Setup {
  name: string
  massKg: number
  frame: Frame
  ratedKg: number | null
  ratingCovers: RatingCovers
}

export interface Pack {
  name: string
  bodyLitres: number
  collarLitres: number
  outsideLitres: number | null
  bodyFrom: BodyFrom
  sealed: boolean
  fabric: string | null
  denier: number | null
  price: number | null
  currency: string | null
  innerHeightCm: number | null
  innerWidthCm: number | null
  innerDepthCm: number | null
  section: Section
  setups: Setup[]
}

export interface Settings {
  rigidPacking: number
  softPacking: number
  fillEfficiency: number
  habitCorrelation: number
  personalFactor: number
  personalFactorSpread: number | null
  linerKg: number
  framelessCeilingKg: number
  roomyRatio: number
  packKgForEnergy: number
  /** The hiker's own: a pack at or under this mass for each litre is light; null: not said. */
  lightGramsPerLitre: number | null
  /** Room the hiker wants to spare over the likely need; null: not said. */
  headroomLitres: number | null
}

export interface Plan {
  name: string
  carrier: Carrier
  trip: Trip
  gear: Item[]
  packs: Pack[]
  settings: Settings
}
