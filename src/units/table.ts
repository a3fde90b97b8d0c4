// The units that may be typed: symbol, dimension, size in the dimension's base, and other spellings.
// Bases: kg, L, m, °C, h, kcal. Spellings are lower case without spaces; an ending s is allowed for.
import {
  cubicFootL,
  cubicInchL,
  cupL,
  fluidOunceL,
  footM,
  gallonL,
  inchM,
  kcalKj,
  mileM,
  ounceKg,
  over,
  pintL,
  poundKg,
  quartL,
  type Ratio,
  ratio,
  stoneKg,
  yardM,
} from './exact'

type Row = readonly [size: Ratio, spellings?: string, zeroAt?: number]

const one = ratio(1)
const tenth = ratio(1, 10)
const hundredth = ratio(1, 100)
const thousandth = ratio(1, 1000)
const thousand = ratio(1000)

const TABLE = {
  mass: {
    kg: [one, 'kilo kilogram'],
    g: [thousandth, 'gr gram'],
    mg: [ratio(1, 1_000_000)],
    '100 g': [tenth],
    lb: [poundKg, 'pound'],
    oz: [ounceKg, 'ounce'],
    st: [stoneKg, 'stone'],
  },
  volume: {
    L: [one, 'liter litre'],
    mL: [thousandth, 'cc cm3 milliliter millilitre'],
    dL: [tenth],
    cL: [hundredth],
    'cu in': [cubicInchL, 'ci in3 cubicin cubicinch cubicinches'],
    'cu ft': [cubicFootL, 'ft3 cubicft cubicfoot cubicfeet'],
    gal: [gallonL, 'gallon'],
    qt: [quartL, 'quart'],
    pt: [pintL, 'pint'],
    cup: [cupL],
    'fl oz': [fluidOunceL, 'fluidoz fluidounce'],
  },
  length: {
    km: [thousand, 'kilometer kilometre'],
    m: [one, 'meter metre'],
    cm: [hundredth, 'centimeter centimetre'],
    mm: [thousandth, 'millimeter millimetre'],
    mi: [mileM, 'mile'],
    yd: [yardM, 'yard'],
    ft: [footM, "' foot feet"],
    in: [inchM, '" inch inches'],
  },
  temperature: {
    '°C': [one, 'c celsius'],
    '°F': [ratio(5, 9), 'f fahrenheit', 32],
  },
  time: {
    h: [one, 'hr hour'],
    min: [ratio(1, 60), 'minute'],
    s: [ratio(1, 3600), 'sec second'],
  },
  energy: {
    kcal: [one, 'cal calorie'],
    kJ: [over(one, kcalKj)],
  },
  'length/time': {
    mph: [mileM],
    kph: [thousand, 'kmh'],
  },
  share: { '%': [hundredth, '٪ percent'] },
  count: { x: [one, '× pc piece'] },
  '': { '': [one] },
} satisfies Record<string, Record<string, Row>>

type KeyOf<T> = T extends unknown ? keyof T : never

/** A unit of the table by its symbol. */
export type SimpleUnit = KeyOf<(typeof TABLE)[keyof typeof TABLE]>

/** The ratios that a field may hold or show; any two units of the table with a stroke between may be typed. */
type RatioUnit =
  | 'km/h'
  | 'm/s'
  | 'm/h'
  | 'm/min'
  | 'ft/h'
  | 'ft/min'
  | 'L/h'
  | 'mL/h'
  | 'qt/h'
  | 'fl oz/h'
  | 'kg/L'
  | 'g/mL'
  | 'lb/cu ft'
  | 'g/L'
  | 'oz/L'
  | 'g/kg'
  | 'oz/lb'
  | 'kcal/kg'
  | 'kcal/oz'
  | 'kcal/100 g'
  | 'kJ/100 g'

/** A unit that a field may hold or show. */
export type Unit = SimpleUnit | RatioUnit

/** What a unit measures, and its size in the base of that dimension; zeroAt is the reading at base zero. */
export type Measure = { unit: string; dimension: string; size: Ratio; zeroAt: number }

const measures = new Map<string, Measure>()
const spelled = new Map<string, Measure>()
/** Those of two units that were asked for: of the few that a field may hold or show. */
const ratios = new Map<string, Measure>()

for (const [dimension, units] of Object.entries<Record<string, Row>>(TABLE)) {
  for (const [unit, [size, spellings = '', zeroAt = 0]] of Object.entries(units)) {
    const measure = { unit, dimension, size, zeroAt }
    measures.set(unit, measure)
    for (const word of `${unit.toLowerCase().replaceAll(' ', '')} ${spellings}`.split(' ')) {
      if (word) spelled.set(word, measure)
      if (word.length > 1) spelled.set(`${word}s`, measure)
    }
  }
}

/** The unit of this spelling (lower case, no spaces), if there is one. */
export const unitSpelled = (word: string): Measure | undefined => spelled.get(word)

/** a per b as one unit. */
export const measurePer = (a: Measure, b: Measure): Measure => ({
  unit: `${a.unit}/${b.unit}`,
  dimension: `${a.dimension}/${b.dimension}`,
  size: over(a.size, b.size),
  zeroAt: 0,
})

/** The measure of a unit symbol. Throws RangeError for a symbol outside the table. */
export const measureOf = (unit: Unit): Measure => {
  const simple = measures.get(unit)
  if (simple) return simple
  const known = ratios.get(unit)
  if (known) return known
  const [a, b] = unit.split('/').map(part => measures.get(part))
  if (!a || !b) throw new RangeError(`no such unit: ${unit}`)
  const measure = measurePer(a, b)
  ratios.set(unit, measure)
  return measure
}

/** Symbols of one dimension, in table order. */
export const unitsOf = (dimension: string): Unit[] =>
  [...measures.values()].flatMap(m =>
    m.dimension === dimension && m.unit !== '100 g' ? (m.unit as Unit) : [],
  )
