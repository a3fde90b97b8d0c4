// The plan document as files and forms hold it: the one place where a plan is checked.
// Unknown fields are refused by name; every number is finite and inside the range in limits.ts.

import * as z from 'zod/mini'
import { CAPS } from './caps'
import { PLAN_FORMAT, PLAN_VERSION } from './format'
import { LIMITS, type Limit } from './limits'

const rangeText = ({ min, max, unit }: Limit) => `${min} to ${max} ${unit}`

function number(limit: Limit) {
  const error = limit.whole
    ? `write a whole number from ${rangeText(limit)}`
    : `write a number from ${rangeText(limit)}`
  const checks = [z.gte(limit.min, { error }), z.lte(limit.max, { error })]
  const base = z.number({ error: issue => (issue.input === undefined ? `missing: ${error}` : error) })
  return limit.whole ? base.check(...checks, wholeNumber(error)) : base.check(...checks)
}

/** As `multipleOf(1)`, which lets the smallest fractions a double can hold pass. */
const wholeNumber = (message: string) =>
  z.check<number>(({ value: input, issues }) => {
    if (Number.isInteger(input)) return
    issues.push({ code: 'not_multiple_of', divisor: 1, origin: 'number', input, message })
  })

function choice<const T extends readonly [string, ...string[]]>(...options: T) {
  const list = options.map(o => `"${o}"`).join(', ')
  return z.enum(options, { error: `write one of ${list}` })
}

const truth = z.boolean({ error: 'write true or false' })

const words = (maxLength: number) =>
  z
    .string({ error: 'write text in quotes' })
    .check(z.maxLength(maxLength, { error: `shorten it to ${maxLength} characters or fewer` }))

const name = words(CAPS.nameLength).check(z.minLength(1, { error: 'is empty: give it a name' }))
const text = words(CAPS.nameLength)

/** An object that refuses unknown fields by name. */
function record<T extends Record<string, z.core.SomeType>>(shape: T) {
  return z.strictObject(shape, { error: objectError })
}

const objectError: z.core.$ZodErrorMap = issue => {
  if (issue.code === 'unrecognized_keys') return 'is not a field of a plan: remove it or check its spelling'
  return issue.input === undefined ? 'is missing: write an object in braces' : 'write an object in braces'
}

function list<T extends z.core.SomeType>(entry: T, atLeast: number, atMost: number, what: string) {
  return z
    .array(entry, { error: `write a list of ${what} in square brackets` })
    .check(
      z.minLength(atLeast, { error: `give ${atLeast} or more ${what}` }),
      z.maxLength(atMost, { error: `holds too many ${what}: ${atMost} at most` }),
    )
}

// Absent means absent: a key that holds undefined would hide its default.
const opt = z.exactOptional

const carrier = record({
  massKg: number(LIMITS.carrier.massKg),
  heightCm: opt(number(LIMITS.carrier.heightCm)),
  ageYears: opt(number(LIMITS.carrier.ageYears)),
  sex: opt(choice('female', 'male')),
  loadShareLimit: opt(number(LIMITS.carrier.loadShareLimit)),
})

const leg = record({
  km: number(LIMITS.leg.km),
  ascentM: opt(number(LIMITS.leg.ascentM)),
  descentM: opt(number(LIMITS.leg.descentM)),
  hours: opt(number(LIMITS.leg.hours)),
  airC: opt(number(LIMITS.leg.airC)),
  humidity: opt(number(LIMITS.leg.humidity)),
  sun: opt(truth),
  ground: opt(choice('paved', 'trail', 'rough', 'brush', 'sand')),
})

const stop = record({
  name,
  water: opt(choice('sure', 'doubtful', 'none')),
  nights: opt(number(LIMITS.stop.nights)),
  meals: opt(choice('carried', 'provided')),
  resupply: opt(truth),
  shop: opt(truth),
  leg: opt(leg),
})

const water = record({
  litresPerHour: opt(
    z.union([z.literal('from-heat'), number(LIMITS.water.litresPerHour)], {
      error: `write a number from ${rangeText(LIMITS.water.litresPerHour)}, or "from-heat"`,
    }),
  ),
  campLitres: opt(number(LIMITS.water.campLitres)),
  reserveLitres: opt(number(LIMITS.water.reserveLitres)),
  trustDoubtful: opt(truth),
})

const meals = record({
  breakfast: opt(number(LIMITS.meals.breakfast)),
  trail: opt(number(LIMITS.meals.trail)),
  supper: opt(number(LIMITS.meals.supper)),
  supperAfterEnd: opt(truth),
  spareDays: opt(number(LIMITS.meals.spareDays)),
  ration: opt(choice('fixed', 'energy')),
  deficit: opt(number(LIMITS.meals.deficit)),
})

const pace = record({
  flatKmh: opt(number(LIMITS.pace.flatKmh)),
  climbMPerH: opt(number(LIMITS.pace.climbMPerH)),
  descendMPerH: opt(number(LIMITS.pace.descendMPerH)),
})

const weather = record({
  airC: opt(number(LIMITS.leg.airC)),
  humidity: opt(number(LIMITS.leg.humidity)),
  sun: opt(truth),
})

const trip = record({
  stops: list(stop, 2, CAPS.stops, 'stops'),
  pace: opt(pace),
  water: opt(water),
  meals: opt(meals),
  weather: opt(weather),
  wet: opt(truth),
})

const fuel = record({
  kind: choice('gas', 'white-gas', 'ethanol', 'methanol', 'tablet'),
  boilLitres: opt(number(LIMITS.fuel.boilLitres)),
  startC: opt(number(LIMITS.fuel.startC)),
  meltLitres: opt(number(LIMITS.fuel.meltLitres)),
  altitudeM: opt(number(LIMITS.fuel.altitudeM)),
  efficiency: opt(number(LIMITS.fuel.efficiency)),
})

const litresRange = record({
  low: number(LIMITS.item.litres),
  typical: number(LIMITS.item.litres),
  high: number(LIMITS.item.litres),
})

const litresFrom = choice('filled', 'dimensions', 'stated', 'guess', 'kind')

const itemFields = record({
  id: name,
  name: opt(text),
  group: opt(text),
  count: opt(number(LIMITS.item.count)),
  massKg: z.nullable(number(LIMITS.item.massKg)),
  litres: opt(z.nullable(number(LIMITS.item.litres))),
  stow: opt(choice('main-body', 'outside-pocket', 'strapped-on', 'worn')),
  build: opt(choice('soft', 'rigid')),
  use: opt(choice('kept', 'daily', 'nightly', 'spread')),
  leaves: opt(number(LIMITS.item.leaves)),
  resupplied: opt(truth),
  kcalPerKg: opt(number(LIMITS.item.kcalPerKg)),
  fuel: opt(fuel),
  holdsLitres: opt(number(LIMITS.item.holdsLitres)),
  inside: opt(name),
  holdsWaterLitres: opt(number(LIMITS.item.holdsWaterLitres)),
  lengthCm: opt(number(LIMITS.item.lengthCm)),
  diameterCm: opt(number(LIMITS.item.diameterCm)),
  widthCm: opt(number(LIMITS.item.widthCm)),
  depthCm: opt(number(LIMITS.item.depthCm)),
  optional: opt(truth),
  mayRideOutside: opt(truth),
  massFrom: opt(choice('scale', 'stated', 'guess')),
  litresFrom: opt(litresFrom),
  litresRange: opt(litresRange),
})

/** A kind gives its litres as a range; every other item needs them as one number. Said with all else that is wrong. */
export const itemSchema = itemFields.check(
  z.refine(({ litres, litresFrom }) => litres !== undefined || litresFrom === 'kind', {
    path: ['litres'],
    error: `missing: write a number from ${rangeText(LIMITS.item.litres)}`,
    when: ({ value }) => typeof value === 'object' && value !== null && !Object.hasOwn(value, 'litres'),
  }),
)

const setup = record({
  name,
  massKg: number(LIMITS.setup.massKg),
  frame: choice('framed', 'frameless'),
  ratedKg: opt(number(LIMITS.setup.ratedKg)),
  ratingCovers: opt(choice('contents-and-pack', 'contents')),
})

const bodyFrom = choice('test-method', 'measured', 'stated', 'guess')

const packFields = record({
  name,
  bodyLitres: opt(number(LIMITS.pack.bodyLitres)),
  totalLitres: opt(number(LIMITS.pack.totalLitres)),
  collarLitres: opt(number(LIMITS.pack.collarLitres)),
  outsideLitres: opt(number(LIMITS.pack.outsideLitres)),
  bodyFrom: opt(bodyFrom),
  sealed: opt(truth),
  fabric: opt(text),
  denier: opt(number(LIMITS.pack.denier)),
  price: opt(number(LIMITS.pack.price)),
  currency: opt(text),
  innerHeightCm: opt(number(LIMITS.pack.innerHeightCm)),
  innerWidthCm: opt(number(LIMITS.pack.innerWidthCm)),
  innerDepthCm: opt(number(LIMITS.pack.innerDepthCm)),
  section: opt(choice('ellipse', 'rectangle')),
  setups: list(setup, 1, CAPS.setups, 'set-ups'),
})

/** A pack gives the litres of its main body, or of all it holds. */
const pack = packFields.check(
  z.refine(({ bodyLitres, totalLitres }) => bodyLitres !== undefined || totalLitres !== undefined, {
    path: ['bodyLitres'],
    error: `missing: write a number from ${rangeText(LIMITS.pack.bodyLitres)}, or give the litres in all`,
    when: ({ value }) =>
      typeof value === 'object' &&
      value !== null &&
      !Object.hasOwn(value, 'bodyLitres') &&
      !Object.hasOwn(value, 'totalLitres'),
  }),
)

const date = z
  .string({ error: 'write a day as "2026-05-02"' })
  .check(z.regex(/^\d{4}-\d\d-\d\d$/, { error: 'write a day as "2026-05-02"' }))

const packedThing = record({
  id: name,
  litres: number(LIMITS.item.litres),
  litresFrom: opt(litresFrom),
  u: number(LIMITS.packing.u),
})

const packing = record({
  date,
  p: opt(number(LIMITS.packing.p)),
  overLitres: opt(number(LIMITS.packing.overLitres)),
  pack: opt(name),
  packLitres: number(LIMITS.packing.packLitres),
  packFrom: opt(bodyFrom),
  W: number(LIMITS.packing.W),
  d: number(LIMITS.packing.d),
  things: list(packedThing, 0, CAPS.items, 'things'),
})

const settings = record({
  rigidPacking: opt(number(LIMITS.settings.rigidPacking)),
  softPacking: opt(number(LIMITS.settings.softPacking)),
  fillEfficiency: opt(number(LIMITS.settings.fillEfficiency)),
  habitCorrelation: opt(number(LIMITS.settings.habitCorrelation)),
  personalFactor: opt(number(LIMITS.settings.personalFactor)),
  personalFactorSpread: opt(z.nullable(number(LIMITS.settings.personalFactorSpread))),
  handSpread: opt(number(LIMITS.settings.handSpread)),
  readingSpread: opt(number(LIMITS.settings.readingSpread)),
  linerKg: opt(number(LIMITS.settings.linerKg)),
  framelessCeilingKg: opt(number(LIMITS.settings.framelessCeilingKg)),
  roomyRatio: opt(number(LIMITS.settings.roomyRatio)),
  packKgForEnergy: opt(number(LIMITS.settings.packKgForEnergy)),
  lightGramsPerLitre: opt(number(LIMITS.settings.lightGramsPerLitre)),
  headroomLitres: opt(number(LIMITS.settings.headroomLitres)),
})

export const planSchema = record({
  format: z.literal(PLAN_FORMAT, { error: `write "${PLAN_FORMAT}"` }),
  version: z.literal(PLAN_VERSION, { error: `write ${PLAN_VERSION}` }),
  name: opt(text),
  carrier,
  trip,
  gear: opt(list(itemSchema, 0, CAPS.items, 'items')),
  packs: opt(list(pack, 0, CAPS.packs, 'packs')),
  packings: opt(list(packing, 0, CAPS.packings, 'packings')),
  settings: opt(settings),
})

/** A plan as written: checked, with what is left to the defaults still absent. */
export type PlanDocument = z.infer<typeof planSchema>
export type StopDocument = PlanDocument['trip']['stops'][number]
export type ItemDocument = NonNullable<PlanDocument['gear']>[number]
export type PackDocument = NonNullable<PlanDocument['packs']>[number]
export type PackingDocument = NonNullable<PlanDocument['packings']>[number]
export type SetupDocument = PackDocument['setups'][number]
