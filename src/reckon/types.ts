// What comes out of the engine. Numbers are unrounded, in kg, litres, km and hours; null where one does not apply.

export type Phase = 'arrive' | 'depart'

export interface Place {
  stop: number
  name: string
  phase: Phase
}

/** What the load, or the main body, is made of at one moment. */
export interface Shares {
  kept: number
  daily: number
  nightly: number
  spread: number
  water: number
  rubbish: number
}

export interface Moment {
  stop: number
  phase: Phase
  day: number
  km: number
  hours: number
  kg: Shares & { total: number }
  /** Water that is wanted then and that no container holds. */
  wantedLitres: number
  /** The load then had every source been left with all the water wanted. */
  fullWaterKg: number
  bodyLitres: number
  rigidLitres: number
  softLitres: number
  outsideLitres: number
  /** Main-body litres by what they are, before packing losses; a container counts as kept by its outer litres. */
  litres: Shares
  /** Mass riding in the main body. */
  bodyKg: number
  /** Of the main body, the soft things not in a container, without water; litres before packing losses. */
  loose: { kg: number; litres: number }
}

export interface LegReckoning {
  hours: number
  waterLitres: number
  litresPerHour: number
  /** Null where no energy figure is given (under 14 years). */
  kcal: number | null
}

export interface DayReckoning {
  day: number
  hours: number
  kcalWalking: number | null
  kcalTotal: number | null
  ration: number
}

export interface WaterCarry {
  /** The source left with this water. */
  stop: number
  /** The next source, or the end. */
  to: number
  needLitres: number
  carriedLitres: number
  shortLitres: number
}

export interface Need {
  bodyLitres: number
  bodyLitresSafe: number
  sigmaV: number
  bodyAt: Place
  outsideLitres: number
  peakLoadKg: number
  peakLoadSafeKg: number
  sigmaM: number
  peakAt: Place
  baseKg: number
  wornKg: number
  /** kg per litre of main body at its fullest; null when nothing rides there. */
  packedDensity: number | null
  longestCm: number | null
  widestCm: number | null
  waterCarryLitres: number
  waterShortLitres: number
  /** What the hiker's own packing takes, times the model's. */
  factor: number
  /** Standard uncertainty of the litres as a share of them. */
  sigmaShare: number
  /** Null: nothing in the gear holds water, so the carry has no limit. */
  waterCapacityLitres: number | null
  /** The largest load had every source been left with all the water wanted; `peakLoadKg` where nothing is short. */
  peakLoadFullWaterKg: number
  peakFullWaterAt: Place
}

export type VerdictCode =
  | 'undersized'
  | 'tight'
  | 'fits-with-collar'
  | 'roomy'
  | 'overloaded'
  | 'near-rating'
  | 'frameless-overloaded'
  | 'outgrows-its-support'
  | 'rating-unknown'
  | 'outside-short'
  | 'too-long'
  | 'too-wide'
  | 'heavy-for-carrier'

/** What a set-up is for the trip: `cannot-tell` where a figure nobody has said could turn it. */
export type Answer = 'does' | 'with-care' | 'cannot-tell' | 'does-not'

export interface SetupReckoning {
  name: string
  setup: string
  /** Index of the pack in the plan, and of the set-up in the pack. */
  pack: number
  index: number
  answer: Answer
  verdicts: VerdictCode[]
  suffices: boolean
  fitChance: number
  fitChanceWithCollar: number
  /** With all the water the trip wants, whatever the containers hold. */
  carriedKg: number
  /** What the rating is held against: the carried load, or the contents alone where it covers only those. */
  ratedAgainstKg: number
  /** The most it may carry: its rating, for a frameless set-up at most the ceiling; null when nothing is known. */
  loadLimitKg: number | null
  /** The load if its main body were filled to the brim with things like these. */
  brimLoadKg: number | null
  linerKg: number
  /** Main-body litres that this pack needs: the need, and what its pockets cannot take. */
  bodyNeedLitres: number
  bodyMarginLitres: number
  ratedMarginKg: number | null
  bodyMassShare: number
  gramsPerLitre: number
  gramsPerRatedKg: number | null
  pricePerLitre: number | null
  reachDays: number | null
}

export type Notice =
  | { code: 'water-short'; stop: number; litres: number }
  | { code: 'water-containers-missing' }
  | { code: 'resting-assumed' }
  | { code: 'energy-not-for-children' }
  | { code: 'energy-out-of-range'; leg: number; name: string }
  | { code: 'air-assumed'; leg: number; name: string }
  | { code: 'water-cap-hour'; leg: number; name: string }
  | { code: 'water-cap-day'; day: number; litres: number }
  | {
      code: 'water-below-heat-table'
      leg: number
      name: string
      litresPerHour: number
      tableLitresPerHour: number
    }
  /** Of the set-ups the lightest to carry, or the contents alone without packs, as a share of body mass. */
  | { code: 'load-over-common-practice'; share: number; limit: number }

export interface Reckoning {
  need: Need
  moments: Moment[]
  legs: LegReckoning[]
  days: DayReckoning[]
  rationRounds: number
  carries: WaterCarry[]
  packs: SetupReckoning[]
  /** Paths of the figures nobody has said, as `gear[3].litres`. */
  missing: string[]
  notices: Notice[]
}
