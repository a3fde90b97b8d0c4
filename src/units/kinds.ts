// The kinds of quantity a field may hold: the unit it is stored in, and how a bare number is read.
// Which default suits which field is a choice of ours; gear is weighed in g or oz, loads in kg or lb.
import { over, type Ratio } from './exact'
import { type Measure, measureOf, type Unit, unitsOf } from './table'

/** How bare numbers are read and quantities shown. 'us' means US customary gallons, quarts and ounces. */
export type System = 'metric' | 'us'

type Kind = readonly [stored: Unit, us: Unit, examples: string, others?: Unit[], metric?: Unit]

const KINDS = {
  mass: ['kg', 'lb', '900 g, 2 lb or 32 oz'],
  volume: ['L', 'L', '45 L, 500 mL, 3000 cu in or 32 fl oz'],
  distance: ['km', 'mi', '12 km, 800 m or 7.5 mi'],
  climb: ['m', 'ft', '600 m or 2000 ft'],
  length: ['cm', 'in', '60 cm, 24 in or 5 ft 10 in'],
  temperature: ['°C', '°F', '24 °C or 75 °F'],
  duration: ['h', 'h', '5 h 30 min, 5:30 or 90 min'],
  speed: ['km/h', 'mph', '4 km/h or 2.5 mph', ['m/s']],
  verticalSpeed: ['m/h', 'ft/h', '300 m/h or 1000 ft/h', ['m/min', 'ft/min']],
  flow: ['L/h', 'qt/h', '0.5 L/h, 500 mL/h or 16 fl oz/h', ['mL/h', 'fl oz/h']],
  count: ['x', 'x', '3'],
  share: ['', '%', '20 %', [], '%'],
  number: ['', '', '1.5'],
  money: ['', '', '180 or 179.95'],
  density: ['kg/L', 'lb/cu ft', '0.28 kg/L or 17.5 lb/cu ft', ['g/mL', 'g/L']],
  energyDensity: [
    'kcal/kg',
    'kcal/oz',
    '4400 kcal/kg, 440 kcal/100 g or 125 kcal/oz',
    ['kcal/100 g', 'kJ/100 g'],
  ],
  gramsPerLitre: ['g/L', 'oz/L', '20 g/L or 0.7 oz/L'],
  gramsPerKg: ['g/kg', 'oz/lb', '80 g/kg or 1.3 oz/lb'],
} satisfies Record<string, Kind>

const FINE: Partial<Record<Quantity, Record<System, Unit>>> = {
  mass: { metric: 'g', us: 'oz' },
  volume: { metric: 'L', us: 'cu in' },
}

/** What a field holds. Stored in kg, L, km, m (climb), cm (length), °C, h, km/h, m/h, L/h, a share of 1, … */
export type Quantity = keyof typeof KINDS

const kindOf = (kind: Quantity): Kind => KINDS[kind]

/** Examples of what may be typed for this kind, as they stand in messages. */
export const examplesOf = (kind: Quantity): string => kindOf(kind)[2]

/** The unit in which a bare number is read; fine asks for the finer one where the kind has it (g, oz, cu in). */
export const bareUnitOf = (kind: Quantity, system: System, fine = false): Unit => {
  const [stored, us, , , metric = stored] = kindOf(kind)
  const finer = fine && FINE[kind]
  if (finer) return finer[system]
  return system === 'us' ? us : metric
}

/** The dimension of a kind: 'mass', 'length/time', '' for a plain number. */
export const dimensionOf = (kind: Quantity): string => measureOf(bareUnitOf(kind, 'metric')).dimension

/** The units to offer for this kind, by symbol; none for plain numbers and counts. Others may be typed. */
export const unitChoices = (kind: Quantity): Unit[] => {
  const [stored, us, , others = []] = kindOf(kind)
  const dimension = dimensionOf(kind)
  if (!dimension || dimension === 'count') return []
  return dimension.includes('/') ? [stored, us, ...others] : unitsOf(dimension)
}

// Every number on a screen asks.
const SCALES = new WeakMap<Measure, Partial<Record<Quantity, Ratio>>>()

/** The unit's size in the kind's stored unit. Throws RangeError where the unit measures something else. */
export const scaleOf = (kind: Quantity, measure: Measure): Ratio => {
  const scales = SCALES.get(measure) ?? {}
  const known = scales[kind]
  if (known) return known
  if (measure.dimension !== dimensionOf(kind)) throw new RangeError(`${measure.unit} is no unit of ${kind}`)
  const scale = over(measure.size, measureOf(kindOf(kind)[0]).size)
  SCALES.set(measure, { ...scales, [kind]: scale })
  return scale
}
