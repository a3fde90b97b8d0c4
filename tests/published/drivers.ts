// Which equation answers which published value: id prefix → subject, source, and a call with the case's inputs.
// The longest prefix that fits an id answers it. Used by the tests here and by tests/bench/validate.ts.

import {
  backpackingWPerKg,
  blendedHours,
  boilingPointC,
  faoKcalPerDay,
  fuelForHeatG,
  fuelKinds,
  gradedWalkingWPerKg,
  harrisBenedictKcalPerDay,
  heatCategories,
  heatToBoilKj,
  heatToMeltKj,
  litresPerQuart,
  loadFactor,
  maxLitresPerDay,
  maxLitresPerHour,
  naismithHours,
  type Outcome,
  pandolfWatts,
  pressurePa,
  restingKcalPerDay,
  restingWPerKg,
  santeeWatts,
  saturationK,
  simplifiedWbgtC,
  stullWetBulbC,
  swissHours,
  swissMinPerKm,
  toblerKmh,
  typicalWatts,
  vapourPressureHPa,
  waterRate,
  yamamotoKcal,
} from '../../src/equations'
import energy from './energy.values.json'
import water from './water.values.json'

export interface Case {
  id: string
  inputs: Record<string, unknown>
  units: string
  expected: number | number[]
  tolerance: number
  kind: string
  source: string
}

/** Inputs read by name: a number unless asked for otherwise; a missing one throws. */
interface Inputs {
  (name: string): number
  has(name: string): boolean
  text(name: string): string
  flag(name: string): boolean
}

export interface Driver {
  equation: string
  source: string
  run(inputs: Inputs): number | number[]
}

export const cases = [...energy.values, ...water.values] as Case[]
export const leftOut = [...energy.leftOut, ...water.leftOut]

export function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok)
    throw new Error(`${outcome.field}: ${outcome.got} is outside ${JSON.stringify(outcome.limit)}`)
  return outcome.value
}

function inputsOf(case_: Case): Inputs {
  const of = <T>(name: string, type: string): T => {
    const found = case_.inputs[name]
    if (typeof found !== type) throw new Error(`${case_.id} has no ${type} ${name}`)
    return found as T
  }
  return Object.assign((name: string) => of<number>(name, 'number'), {
    has: (name: string) => name in case_.inputs,
    text: (name: string) => of<string>(name, 'string'),
    flag: (name: string) => of<boolean>(name, 'boolean'),
  })
}

/** The argument of the least value of f on a fine grid. */
function argmin(f: (x: number) => number, { from, to, step }: { from: number; to: number; step: number }) {
  let best = from
  for (let x = from; x < to; x += step) if (f(x) < f(best)) best = x
  return best
}

const number = (i: Inputs, name: string, otherwise: number) => (i.has(name) ? i(name) : otherwise)
const air = (i: Inputs) => ({ airC: i('T_C'), humidity: i('RH') / 100 })
const altitude = (i: Inputs) => ({ altitudeM: i.has('ft') ? i('ft') * 0.3048 : i('h_m') })
const totals = (i: Inputs) => ({ km: i('km'), ascentM: i('up_m'), descentM: i('down_m') })
const body = (i: Inputs) => ({
  massKg: i('kg'),
  heightCm: i('cm'),
  ageYears: i('yr'),
  sex: i.flag('male') ? ('male' as const) : ('female' as const),
})
const walk = (i: Inputs) => ({
  bodyKg: i('W'),
  loadKg: i('L'),
  speedMPerS: i('V'),
  gradePercent: i('G'),
  terrainFactor: i('eta'),
})
const graded = (speedMPerS: number, gradePercent: number) =>
  value(gradedWalkingWPerKg({ speedMPerS, gradePercent }))

function naismith(i: Inputs): number {
  return value(
    naismithHours({
      km: i('km'),
      ascentM: i('up_m'),
      gentleDescentM: number(i, 'down_5_12deg_m', 0),
      steepDescentM: number(i, 'down_gt12deg_m', 0),
    }),
  )
}

function fao(i: Inputs): number {
  const ageYears = i.has('band_from') ? i('band_from') : Number(i.text('band').split('-')[0])
  const sex = i.text('sex') === 'f' ? 'female' : 'male'
  return value(faoKcalPerDay({ massKg: i('kg'), ageYears, sex }))
}

const yamamoto = (i: Inputs) =>
  value(
    yamamotoKcal({
      hours: i('hours'),
      km: i('km'),
      ascentM: 1000 * i('up_km'),
      descentM: 1000 * i('down_km'),
      bodyKg: i('body_plus_pack_kg'),
      loadKg: 0,
    }),
  )

const dayHours = (i: Inputs) => value(swissHours(totals(i)))

/**
 * The worked day walks its two parts at their own Swiss speeds, where `legPowerWPerKg` takes one speed for
 * the leg, and converts exactly, 3600 / 4184 kcal a watt-hour: so the parts are summed here by hand.
 */
function dayWalkKcal(i: Inputs): number {
  const kcalPerDay = value(restingKcalPerDay(body(i)))
  const state = {
    loadShare: i('L') / i('W'),
    terrainFactor: i('eta'),
    restingWPerKg: value(restingWPerKg({ kcalPerDay, massKg: i('W') })),
  }
  const heightM = i('up_m') + i('down_m')
  const parts = [
    { km: (i('km') * i('up_m')) / heightM, slope: heightM / 1000 / i('km') },
    { km: (i('km') * i('down_m')) / heightM, slope: -heightM / 1000 / i('km') },
  ]
  const wattHours = parts.map(({ km, slope }) => {
    const hours = (km * value(swissMinPerKm({ slope }))) / 60
    const pace = { speedMPerS: km / hours / 3.6, gradePercent: 100 * slope }
    return value(backpackingWPerKg({ ...state, ...pace })) * i('W') * hours
  })
  return (wattHours.reduce((sum, part) => sum + part, 0) * 3600) / 4184
}

function dayTotalKcal(i: Inputs): number {
  const camp = (i('camp_par') * value(restingKcalPerDay(body(i))) * (24 - dayHours(i))) / 24
  return dayWalkKcal(i) + camp
}

const dayBody = (run: (i: Inputs) => number) => (i: Inputs) => run(dayInputs(i))

/** The worked day names body mass W; the body functions ask for kg. */
function dayInputs(i: Inputs): Inputs {
  return Object.assign((name: string) => i(name === 'kg' ? 'W' : name), {
    has: i.has,
    text: i.text,
    flag: i.flag,
  })
}

function tableRow(i: Inputs): number[] {
  const low = i('wbgt_F_low')
  const high = i.has('wbgt_F_high') && low < 90 ? i('wbgt_F_high') : low + 1
  const wbgtC = ((low + high) / 2 - 32) / 1.8
  const { easy, moderate, hard } = typicalWatts
  return [easy, moderate, hard].map(
    watts => value(waterRate({ wbgtC, watts })).litresPerHour / litresPerQuart,
  )
}

/** The pressure whose boiling point is a temperature, by halving. */
function pressureAt(kelvin: number): number {
  let [low, high] = [611.213, 22_064_000]
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2
    if (value(saturationK({ pressurePa: middle })) < kelvin) low = middle
    else high = middle
  }
  return low
}

const heating = (kind: keyof typeof fuelKinds) => () => fuelKinds[kind].lowerHeatingMjPerKg

function gramsForLitres(i: Inputs, lowerHeatingMjPerKg: number): number {
  const litres = number(i, 'L', 1)
  const heatKj = value(heatToBoilKj({ litres, startC: number(i, 'T0', 10), endC: number(i, 'Tb', 100) }))
  return value(fuelForHeatG({ heatKj, lowerHeatingMjPerKg, efficiency: i('eta') }))
}

function winterGrams(i: Inputs): number {
  const boil = value(heatToMeltKj({ litres: i('boil_from_snow_L'), snowC: -10, endC: 100 }))
  const melt = value(heatToMeltKj({ litres: i('melt_to_10C_L'), snowC: -10, endC: 10 }))
  const { lowerHeatingMjPerKg } = fuelKinds.gas
  return value(fuelForHeatG({ heatKj: boil + melt, lowerHeatingMjPerKg, efficiency: i('eta') }))
}

const din = (i: Inputs) => value(blendedHours(totals(i)))
const swiss = (i: Inputs) => value(swissMinPerKm({ slope: i('slope') }))
const rates = { equation: 'water rate', source: 'tb-med-507' }
const lhv = { equation: 'heating value', source: 'fuel-enthalpies' }
const heat = { equation: 'heat for water', source: 'water-heats' }
const grams = { equation: 'fuel mass', source: 'fuel-enthalpies' }

export const drivers: Record<string, Driver> = {
  din33466_: { equation: 'blended hours', source: 'din-33466', run: din },
  day_time_din: { equation: 'blended hours', source: 'din-33466', run: din },
  naismith_flat_1km: { equation: 'Naismith hours', source: 'naismith-1892', run: i => 60 * naismith(i) },
  naismith_up_10m: { equation: 'Naismith hours', source: 'naismith-1892', run: i => 60 * naismith(i) },
  naismith_: { equation: 'Naismith hours', source: 'naismith-1892', run: naismith },
  langmuir_: { equation: 'Langmuir hours', source: 'langmuir-1984', run: naismith },
  tobler_: {
    equation: 'Tobler speed',
    source: 'tobler-1993',
    run: i => value(toblerKmh({ slope: i('slope') })),
  },
  swiss_minperkm_: { equation: 'Swiss min per km', source: 'swiss-hiking-time', run: swiss },
  swiss_flat_speed: { equation: 'Swiss min per km', source: 'swiss-hiking-time', run: i => 60 / swiss(i) },
  swiss_vertical_rate_: {
    equation: 'Swiss min per km',
    source: 'swiss-hiking-time',
    run: i => (1000 * Math.abs(i('slope')) * 60) / swiss(i),
  },
  day_time_swiss: { equation: 'Swiss hours', source: 'swiss-hiking-time', run: dayHours },
  pandolf_: { equation: 'Pandolf power', source: 'pandolf-1977', run: i => value(pandolfWatts(walk(i))) },
  santee_: { equation: 'Santee downhill', source: 'santee-2001', run: i => value(santeeWatts(walk(i))) },
  santee_argmin_grade: {
    equation: 'Santee downhill',
    source: 'santee-2001',
    run: i => {
      const level = { bodyKg: i('W'), loadKg: i('L'), speedMPerS: i('V'), terrainFactor: i('eta') }
      const watts = (gradePercent: number) => value(santeeWatts({ ...level, gradePercent }))
      return argmin(watts, { from: -12, to: -0.01, step: 0.01 })
    },
  },
  lcda2019_: {
    equation: 'graded walking power',
    source: 'looney-2019-graded',
    run: i => graded(i('S'), i('G')),
  },
  lcda2019_economical_speed: {
    equation: 'graded walking power',
    source: 'looney-2019-graded',
    run: i => argmin(s => graded(s, i('G')) / s, { from: 0.5, to: 1.96, step: 0.001 }),
  },
  lcda2019_100m_climb_equiv_km: {
    equation: 'graded walking power',
    source: 'looney-2019-graded',
    run: i => graded(i('S'), i('G_up')) / graded(i('S'), 0) - 1,
  },
  lcda2022_loadfactor_: {
    equation: 'load factor',
    source: 'looney-2022',
    run: i => value(loadFactor({ loadShare: i('L') / i('W') })),
  },
  lcda2022_: {
    equation: 'backpacking power',
    source: 'looney-2022',
    run: i =>
      value(
        backpackingWPerKg({
          speedMPerS: i('S'),
          gradePercent: i('G'),
          loadShare: i('L_over_W'),
          terrainFactor: i('eta'),
          restingWPerKg: i('Mrest_W_per_kg'),
        }),
      ),
  },
  day_walk_kcal: { equation: 'backpacking power', source: 'looney-2022', run: dayBody(dayWalkKcal) },
  day_total_kcal: { equation: 'backpacking power', source: 'looney-2022', run: dayBody(dayTotalKcal) },
  yamamoto_: { equation: 'Yamamoto day', source: 'yamamoto-2016', run: yamamoto },
  day_yamamoto_kcal: {
    equation: 'Yamamoto day',
    source: 'yamamoto-2016',
    run: i => value(yamamotoKcal({ ...totals(i), hours: dayHours(i), bodyKg: i('W'), loadKg: i('L') })),
  },
  mifflin_: {
    equation: 'Mifflin-St Jeor',
    source: 'mifflin-1990',
    run: i => value(restingKcalPerDay(body(i))),
  },
  harrisbenedict84_: {
    equation: 'Harris-Benedict revised',
    source: 'roza-shizgal-1984',
    run: i => value(harrisBenedictKcalPerDay(body(i))),
  },
  fao2004_bmr_: { equation: 'FAO/Schofield', source: 'fao-2004', run: fao },
  fao2004_tee_: { equation: 'FAO/Schofield', source: 'fao-2004', run: i => i('PAL') * fao(i) },
  schofield_: { equation: 'FAO/Schofield', source: 'fao-2004', run: fao },
  bom_e_: { equation: 'vapour pressure', source: 'bom-wbgt', run: i => value(vapourPressureHPa(air(i))) },
  bom_wbgt_: { equation: 'simplified WBGT', source: 'bom-wbgt', run: i => value(simplifiedWbgtC(air(i))) },
  stull_: { equation: 'wet bulb', source: 'stull-2011', run: i => value(stullWetBulbC(air(i))) },
  tb507_cat: { ...rates, run: tableRow },
  tb507_max_hour: { ...rates, run: () => maxLitresPerHour / litresPerQuart },
  tb507_max_day: { ...rates, run: () => maxLitresPerDay / litresPerQuart },
  tb507_watts: {
    equation: 'work class',
    source: 'montain-1999',
    run: () => [typicalWatts.easy, typicalWatts.moderate, typicalWatts.hard],
  },
  qt_to_L_: { ...rates, run: i => i('qt') * litresPerQuart },
  wbgt_78F_C: { ...rates, run: () => heatCategories[0]!.fromWbgtC },
  wbgt_90F_C: { ...rates, run: () => heatCategories[4]!.fromWbgtC },
  isa_p_: { equation: 'air pressure', source: 'isa-1975', run: i => value(pressurePa(altitude(i))) },
  boil_: { equation: 'boiling point', source: 'iapws-if97', run: i => value(boilingPointC(altitude(i))) },
  'if97_tsat_0.1MPa': {
    equation: 'saturation temperature',
    source: 'iapws-if97',
    run: i => value(saturationK({ pressurePa: i('p_Pa') })),
  },
  if97_psat_300K: {
    equation: 'saturation temperature',
    source: 'iapws-if97',
    run: i => pressureAt(i('T_K')),
  },
  lhv_ethanol_l: { ...lhv, run: heating('ethanol') },
  lhv_methanol_l: { ...lhv, run: heating('methanol') },
  lhv_hexamine_s: { ...lhv, run: heating('tablet') },
  lhv_harc_naphtha: { ...lhv, run: heating('white-gas') },
  lhv_harc_ethanol: { ...lhv, run: heating('ethanol') },
  lhv_harc_methanol: { ...lhv, run: heating('methanol') },
  dens_naphtha: {
    equation: 'fuel density',
    source: 'harc-heating-values',
    run: () => fuelKinds['white-gas'].densityKgPerLitre,
  },
  dens_ethanol: {
    equation: 'fuel density',
    source: 'harc-heating-values',
    run: () => fuelKinds.ethanol.densityKgPerLitre,
  },
  q_boil_: {
    ...heat,
    run: i => value(heatToBoilKj({ litres: 1, startC: i('T0'), endC: i('Tb') })),
  },
  q_snow_: {
    ...heat,
    run: i => value(heatToMeltKj({ litres: 1, snowC: i('Tsnow'), endC: i.has('Tb') ? i('Tb') : i('T') })),
  },
  gas_g_per_L_: { ...grams, run: i => gramsForLitres(i, i('LHV')) },
  ethanol_g_per_L_: { ...grams, run: i => gramsForLitres(i, i('LHV')) },
  'gas_g_day_1.5L': { ...grams, run: i => gramsForLitres(i, fuelKinds.gas.lowerHeatingMjPerKg) },
  gas_g_day_winter: { ...grams, run: winterGrams },
}

/** The driver whose prefix fits an id longest. */
export function driverPrefix(id: string): string | undefined {
  const fitting = Object.keys(drivers).filter(prefix => id.startsWith(prefix))
  return fitting.sort((a, b) => b.length - a.length)[0]
}

/** Largest absolute deviation of a case, over its numbers; a missing number counts as infinite. */
export function deviation(case_: Case, driver: Driver): number {
  const got = [driver.run(inputsOf(case_))].flat()
  const expected = [case_.expected].flat()
  if (got.length !== expected.length) return Number.POSITIVE_INFINITY
  return Math.max(...expected.map((number, index) => Math.abs(got[index]! - number)))
}
