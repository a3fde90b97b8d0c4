// The sane range of every number in a plan, declared once: the schema, the fields' hints and the
// messages all read it from here. The ends are judgements of ours, wide enough for any real trip.

export interface Limit {
  min: number
  max: number
  unit: string
  whole?: boolean
}

/** Ends included; what is no number is not. */
export const isWithin = (value: number, { min, max }: Pick<Limit, 'min' | 'max'>): boolean =>
  value >= min && value <= max

const limit = (min: number, max: number, unit: string): Limit => ({ min, max, unit })
const whole = (min: number, max: number, unit: string): Limit => ({ min, max, unit, whole: true })

export const LIMITS = {
  carrier: {
    massKg: limit(10, 300, 'kg'),
    heightCm: limit(50, 250, 'cm'),
    ageYears: limit(1, 110, 'years'),
    loadShareLimit: limit(0.01, 1, 'of body mass'),
  },
  stop: { nights: whole(0, 60, 'nights') },
  leg: {
    km: limit(0, 500, 'km'),
    ascentM: limit(0, 20000, 'm'),
    descentM: limit(0, 20000, 'm'),
    hours: limit(0, 200, 'h'),
    airC: limit(-60, 60, '°C'),
    humidity: limit(0, 1, 'as a share of 1'),
  },
  pace: {
    flatKmh: limit(0.2, 20, 'km/h'),
    climbMPerH: limit(20, 5000, 'm/h'),
    descendMPerH: limit(20, 10000, 'm/h'),
  },
  water: {
    litresPerHour: limit(0, 5, 'L/h'),
    campLitres: limit(0, 50, 'L'),
    reserveLitres: limit(0, 50, 'L'),
  },
  meals: {
    breakfast: limit(0, 1, 'of a day'),
    trail: limit(0, 1, 'of a day'),
    supper: limit(0, 1, 'of a day'),
    spareDays: limit(0, 60, 'days'),
    deficit: limit(0, 0.9, 'of a day'),
  },
  item: {
    count: whole(0, 1000, 'pieces'),
    massKg: limit(0, 200, 'kg'),
    litres: limit(0, 500, 'L'),
    leaves: limit(0, 1, 'of what is used'),
    kcalPerKg: limit(0, 9500, 'kcal/kg'),
    holdsLitres: limit(0.01, 500, 'L'),
    holdsWaterLitres: limit(0, 100, 'L'),
    lengthCm: limit(0, 500, 'cm'),
    diameterCm: limit(0, 200, 'cm'),
    widthCm: limit(0, 200, 'cm'),
    depthCm: limit(0, 200, 'cm'),
  },
  fuel: {
    boilLitres: limit(0, 50, 'L'),
    startC: limit(0, 60, '°C'),
    meltLitres: limit(0, 50, 'L'),
    altitudeM: limit(-500, 9000, 'm'),
    efficiency: limit(0.05, 0.95, 'as a share of 1'),
  },
  pack: {
    bodyLitres: limit(1, 300, 'L'),
    totalLitres: limit(1, 500, 'L'),
    collarLitres: limit(0, 100, 'L'),
    outsideLitres: limit(0, 200, 'L'),
    denier: limit(1, 5000, 'denier'),
    price: limit(0, 1e7, 'in its currency'),
    innerHeightCm: limit(5, 250, 'cm'),
    innerWidthCm: limit(3, 150, 'cm'),
    innerDepthCm: limit(3, 150, 'cm'),
  },
  setup: {
    massKg: limit(0.01, 20, 'kg'),
    ratedKg: limit(0.1, 200, 'kg'),
  },
  settings: {
    rigidPacking: limit(0.3, 1, 'as a share of 1'),
    softPacking: limit(0.3, 1, 'as a share of 1'),
    fillEfficiency: limit(0, 1, 'as a share of 1'),
    habitCorrelation: limit(0, 1, 'as a share of 1'),
    personalFactor: limit(0.2, 5, 'times'),
    personalFactorSpread: limit(0, 1, 'as a share of 1'),
    handSpread: limit(0, 0.5, 'as a share of 1'),
    readingSpread: limit(0.005, 0.2, 'as a share of 1'),
    linerKg: limit(0, 2, 'kg'),
    framelessCeilingKg: limit(0.5, 100, 'kg'),
    roomyRatio: limit(1, 10, 'times'),
    packKgForEnergy: limit(0, 20, 'kg'),
    lightGramsPerLitre: limit(1, 500, 'g/L'),
    headroomLitres: limit(0, 100, 'L'),
  },
  packing: {
    p: limit(0.3, 1.5, 'of the main body'),
    overLitres: limit(0, 100, 'L'),
    packLitres: limit(1, 300, 'L'),
    W: limit(0, 1000, 'L'),
    d: limit(0, 1, 'as a share of 1'),
    u: limit(0, 1, 'as a share of 1'),
    /** What a packing may say: beyond this, one of its figures is wrong. */
    factor: limit(0.4, 2.5, 'times what is reckoned'),
  },
} as const satisfies Record<string, Record<string, Limit>>
