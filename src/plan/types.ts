// The plan as the engine reads it: every default filled in, absent things null.
// Free of any schema library, so that the engine depends on plain types alone.

export type Water = 'sure' | 'doubtful' | 'none'
export type Ground = 'paved' | 'trail' | 'rough' | 'brush' | 'sand'
export type Stow = 'main-body' | 'outside-pocket' | 'strapped-on' | 'worn'
export type Build = 'soft' | 'rigid'
export type Use = 'kept' | 'daily' | 'nightly' | 'spread'
export type MassFrom = 'scale' | 'stated' | 'guess'
export type LitresFrom = 'filled' | 'dimensions' | 'stated' | 'guess' | 'kind'
export type BodyFrom = 'test-method' | 'measured' | 'stated' | 'guess'
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

/** What a person of a party would carry: indices of a pack of the plan and of its set-up. */
export interface PackChoice {
  pack: number
  setup: number
}

/** One of several who walk together. */
export interface Person extends Carrier {
  id: string
  name: string
  /** Times the water habits of the trip. */
  waterShare: number
  pack: PackChoice | null
}

/** How things are shared out. */
export interface SplitWish {
  /** `limit`: by each one's share of their own limit; `mass`: by what each carries; or the id of one to be spared. */
  by: string
}

export interface Leg {
  km: number
  ascentM: number
  descentM: number
  /** Walking hours the hiker knows better; null: computed. */
  hours: number | null
  /** Null, as humidity and sun: as the trip's weather says. */
  airC: number | null
  humidity: number | null
  sun: boolean | null
  ground: Ground
}

export interface Stop {
  name: string
  water: Water
  nights: number
  meals: 'carried' | 'provided'
  resupply: boolean
  /** Food can be bought here: a mark that changes no figure. */
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
  /** Of what heat and effort ask for, so much is drunk; left out: all of it. */
  heatShare?: number
}

/** What stands for every leg that does not say its own. */
export interface Weather {
  /** Null: not known. */
  airC: number | null
  humidity: number
  /** Walked in full sun. */
  sun: boolean
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
  weather: Weather
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

/** The most that a figure nobody has said may be, each; null: it is known. */
export interface UnknownUpTo {
  massKg: number | null
  litres: number | null
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
  /** On the list, and left at home: it counts nowhere. */
  atHome: boolean
  /** Of a party: whose it is by id, null: everybody's; who is to carry it; and whether others than its owner may. */
  owner: string | null
  carriedBy: string | null
  shareable: boolean
  /** Null: nobody said. */
  mayRideOutside: boolean | null
  massFrom: MassFrom
  litresFrom: LitresFrom
  /** With `litresFrom: 'kind'` and never else. */
  litresRange: LitresRange | null
  /** A figure nobody has said reckons as 0, and as this much where it is asked what it could turn; null: both known. */
  unknownUpTo: UnknownUpTo | null
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
  /** A number: how sure the factor is; it then stands for the hand and the packing model both. */
  personalFactorSpread: number | null
  /** How far one hand's packing lies from the model's, one standard deviation as a share of the litres. */
  handSpread: number
  /** How well it is read how full a pack is, one standard deviation as a share of the pack. */
  readingSpread: number
  linerKg: number
  framelessCeilingKg: number
  roomyRatio: number
  packKgForEnergy: number
  /** What a pack filled to its brim weighs for each litre of its main body, where no gear is told. */
  brimKgPerLitre: number
  /** The hiker's own: a pack at or under this mass for each litre is light; null: not said. */
  lightGramsPerLitre: number | null
  /** Room the hiker wants to spare over the likely need; null: not said. */
  headroomLitres: number | null
}

/** A thing of a packing as it was then. */
export interface PackedThing {
  id: string
  /** Each; of a kind the mean. */
  litres: number
  litresFrom: LitresFrom
  /** Standard uncertainty of what it took of the main body, as a share of W. */
  u: number
}

/** Known gear packed into a pack of known litres, and how full it was found. */
export interface PastPacking {
  /** YYYY-MM-DD. */
  date: string
  /** Who of a party packed, by id; left out: the first. */
  person?: string
  /** How full: 1 to the brim, more where it would not close. */
  p: number
  /** Packings of one name are of one pack. */
  pack: string | null
  packLitres: number
  packFrom: BodyFrom
  /** What the things were reckoned to take at a factor of 1, L. */
  W: number
  /** Spread of the packing model for them, as a share of W. */
  d: number
  things: PackedThing[]
}

export interface Plan {
  name: string
  carrier: Carrier
  trip: Trip
  gear: Item[]
  packs: Pack[]
  packings: PastPacking[]
  settings: Settings
}

/** A plan of people who share out what they carry. */
export interface PartyPlan extends Omit<Plan, 'carrier'> {
  people: Person[]
  split: SplitWish
}
