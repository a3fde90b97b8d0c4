// Which equation answers which published value: id prefix → subject, source, and a call with the case's inputs.
// The longest prefix that fits an id answers it. Used by the tests here and by tests/bench/validate.ts.

import {
  backpackingWPerKg,
  blendedHours,
  boilingPointC,
  fuelKinds,
  harrisBenedictKcalPerDay,
  heatCategories,
  heatToBoilKj,
  heatToMeltKj,
  litresPerQuart,
  loadFactor,
  maxLitresPerDay,
  maxLitresPerHour,
  pandolfWatts,
  pressurePa,
  restingKcalPerDay,
  santeeWatts,
  saturationK,
  simplifiedWbgtC,
  stullWetBulbC,
  swissMinPerKm,
  thirstyRate,
  toblerKmh,
  typicalWatts,
  vapourPressureHPa,
  yamamotoKcal,
} from '../../src/equations'
import { type Inputs, value } from './cases'
import {
  air,
  altitude,
  argmin,
  body,
  dayBody,
  dayHours,
  dayTotalKcal,
  dayWalkKcal,
  fao,
  graded,
  gramsForLitres,
  heating,
  naismith,
  pressureAt,
  tableRow,
  totals,
  walk,
  winterGrams,
  yamamoto,
} from './inputs'

export interface Driver {
  equation: string
  source: string
  run(inputs: Inputs): number | number[]
}

const din = (i: Inputs) => value(blendedHours(totals(i)))
const swiss = (i: Inputs) => value(swissMinPerKm({ slope: i('slope') }))
const rates = { equation: 'water rate', source: 'tb-med-507' }
const thirsty = (i: Inputs, fullSun: boolean) =>
  value(thirstyRate({ wbgtC: i('wbgtC'), watts: i('watts'), fullSun }))
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
  tb507_individual: { ...rates, run: i => thirsty(i, false).addedLitresPerHour / litresPerQuart },
  tb507_sun: {
    ...rates,
    run: i => {
      const [shade, sun] = [thirsty(i, false), thirsty(i, true)]
      return (sun.addedLitresPerHour - shade.addedLitresPerHour) / litresPerQuart
    },
  },
  thirsty_: { ...rates, run: i => thirsty(i, i.flag('sun')).litresPerHour },
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
