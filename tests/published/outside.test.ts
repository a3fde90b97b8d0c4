// Every equation with every kind of number: it answers with finite numbers or names the field that is outside.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as eq from '../../src/equations'

type Fields = Record<string, number>
type Call = (fields: Fields) => eq.Outcome<unknown>

const legFields = { km: 10, ascentM: 500, descentM: 300 }
const bodyFields = { massKg: 70, heightCm: 172, ageYears: 34 }
const walkFields = { bodyKg: 70, loadKg: 10, speedMPerS: 1.2, terrainFactor: 1.1 }
const airFields = { airC: 22, humidity: 0.5 }
const fuelFields = { boilLitres: 1.5, startC: 10, meltLitres: 1, altitudeM: 1200, efficiency: 0.4 }
const powerFields = { loadShare: 0.2, terrainFactor: 1.1, restingWPerKg: 1.1 }
const boxFields = { lengthCm: 40, widthCm: 30, heightCm: 25 }
const innerFields = { innerHeightCm: 60, innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 1 }
const ellipseFields = { semiMajorCm: 16, semiMinorCm: 12 }
const pieceFields = { massKg: 3, behindM: 0.1, aboveM: 0.35 }
const innerOf = (fields: Fields) => ({ section: 'ellipse', ...fields }) as unknown as eq.PackInner

/** Each public function with fields inside its ranges; nested quantities are flattened here. */
const calls: Record<string, [fields: Fields, call: Call]> = {
  blendedHours: [
    { ...legFields, flatKmh: 4, climbMPerH: 300, descendMPerH: 500 },
    ({ flatKmh, climbMPerH, descendMPerH, ...leg }) =>
      eq.blendedHours({
        ...(leg as typeof legFields),
        pace: { flatKmh, climbMPerH, descendMPerH } as eq.Pace,
      }),
  ],
  evenSlope: [{ ...legFields }, eq.evenSlope as unknown as Call],
  naismithHours: [
    { km: 10, ascentM: 500, gentleDescentM: 100, steepDescentM: 100 },
    eq.naismithHours as Call,
  ],
  toblerKmh: [{ slope: 0.1, paceFactor: 1 }, eq.toblerKmh as Call],
  toblerHours: [{ ...legFields, paceFactor: 1 }, eq.toblerHours as unknown as Call],
  swissMinPerKm: [{ slope: 0.1 }, eq.swissMinPerKm as Call],
  swissHours: [{ ...legFields, paceFactor: 1 }, eq.swissHours as unknown as Call],
  backpackingWPerKg: [
    { speedMPerS: 1.2, gradePercent: 5, ...powerFields },
    eq.backpackingWPerKg as unknown as Call,
  ],
  loadFactor: [{ loadShare: 0.2 }, eq.loadFactor as Call],
  gradedWalkingWPerKg: [{ speedMPerS: 1.2, gradePercent: 5 }, eq.gradedWalkingWPerKg as Call],
  legPowerWPerKg: [{ ...legFields, hours: 3, ...powerFields }, eq.legPowerWPerKg as unknown as Call],
  pandolfWatts: [{ ...walkFields, gradePercent: 5 }, eq.pandolfWatts as unknown as Call],
  santeeWatts: [{ ...walkFields, gradePercent: -5 }, eq.santeeWatts as unknown as Call],
  yamamotoKcal: [{ ...legFields, hours: 5, bodyKg: 70, loadKg: 10 }, eq.yamamotoKcal as unknown as Call],
  restingKcalPerDay: [bodyFields, eq.restingKcalPerDay as unknown as Call],
  harrisBenedictKcalPerDay: [bodyFields, eq.harrisBenedictKcalPerDay as unknown as Call],
  faoKcalPerDay: [{ massKg: 70, ageYears: 34 }, eq.faoKcalPerDay as unknown as Call],
  restingWPerKg: [{ kcalPerDay: 1500, massKg: 70 }, eq.restingWPerKg as Call],
  vapourPressureHPa: [airFields, eq.vapourPressureHPa as unknown as Call],
  simplifiedWbgtC: [airFields, eq.simplifiedWbgtC as unknown as Call],
  stullWetBulbC: [airFields, eq.stullWetBulbC as unknown as Call],
  waterRate: [{ wbgtC: 20, watts: 400 }, eq.waterRate as Call],
  thirstyRate: [
    { wbgtC: 20, watts: 400 },
    fields => eq.thirstyRate({ ...(fields as { wbgtC: number; watts: number }), fullSun: true }),
  ],
  cappedLitresPerHour: [{ litresPerHour: 0.5 }, eq.cappedLitresPerHour as Call],
  pressurePa: [{ altitudeM: 1200 }, eq.pressurePa as Call],
  saturationK: [{ pressurePa: 90_000 }, eq.saturationK as Call],
  boilingPointC: [{ altitudeM: 1200 }, eq.boilingPointC as Call],
  heatToBoilKj: [{ litres: 1, startC: 10, endC: 95 }, eq.heatToBoilKj as Call],
  heatToMeltKj: [{ litres: 1, snowC: -10, endC: 10 }, eq.heatToMeltKj as Call],
  fuelForHeatG: [{ heatKj: 400, lowerHeatingMjPerKg: 45, efficiency: 0.4 }, eq.fuelForHeatG as Call],
  fuelG: [fuelFields, fields => eq.fuelG({ kind: 'gas', ...(fields as typeof fuelFields) })],
  cartridgesFor: [{ needG: 300 }, eq.cartridgesFor as Call],
  boxLitres: [{ ...boxFields, halfWidthCm: 0.5 }, eq.boxLitres as unknown as Call],
  cylinderLitres: [{ diameterCm: 22, lengthCm: 30, halfWidthCm: 0.5 }, eq.cylinderLitres as unknown as Call],
  girthLitres: [
    { girthCm: 50, lengthCm: 28, halfWidthCm: 0.5, squeezeShare: 0.1 },
    eq.girthLitres as unknown as Call,
  ],
  filledBoxLitres: [
    { ...boxFields, baseHalfWidthCm: 0.3, heightHalfWidthCm: 1 },
    eq.filledBoxLitres as unknown as Call,
  ],
  displacedLitres: [{ riseLitres: 3, halfWidthLitres: 0.1 }, eq.displacedLitres as unknown as Call],
  fillDensityGPerLitre: [
    { pressurePa: 3000 },
    ({ pressurePa }) => eq.fillDensityGPerLitre({ fill: 'down', pressurePa: pressurePa! }),
  ],
  squeezedShare: [{ fromPa: 6900, toPa: 3000 }, eq.squeezedShare as Call],
  insulatedLitres: [
    { fillG: 350, shellG: 400 },
    ({ fillG, shellG }) =>
      eq.insulatedLitres({ fill: 'synthetic', squeeze: 'hand', fillG: fillG!, shellG: shellG! }),
  ],
  rolledMat: [{ lengthCm: 183, widthCm: 51, thicknessCm: 1.5, coreCm: 2 }, eq.rolledMat as Call],
  matLitres: [
    { lengthCm: 183, widthCm: 51, thicknessCm: 1.5, coreCm: 2, squeezeShare: 0.1 },
    eq.matLitres as unknown as Call,
  ],
  fitOf: [
    { lengthCm: 30, widthCm: 20, depthCm: 10, ...innerFields },
    ({ lengthCm, widthCm, depthCm, ...inner }) =>
      eq.fitOf({ shape: 'box', lengthCm: lengthCm!, widthCm: widthCm!, depthCm: depthCm! }, innerOf(inner)),
  ],
  fitRoom: [
    { diameterCm: 22, lengthCm: 30, ...innerFields },
    ({ diameterCm, lengthCm, ...inner }) =>
      eq.fitRoom({ shape: 'cylinder', diameterCm: diameterCm!, lengthCm: lengthCm! }, innerOf(inner)),
  ],
  pairStands: [
    { innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 1, oneCm: 12, otherCm: 14 },
    ({ oneCm, otherCm, ...inner }) => eq.pairStands({ ...innerOf(inner), oneCm: oneCm!, otherCm: otherCm! }),
  ],
  pairDiameterCm: [
    { innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 1 },
    inner => eq.pairDiameterCm(innerOf(inner)),
  ],
  longestRodCm: [innerFields, inner => eq.longestRodCm(innerOf(inner))],
  ellipsePerimeterCm: [ellipseFields, eq.ellipsePerimeterCm as unknown as Call],
  inscribedRadiusCm: [{ ...ellipseFields, offsetCm: 3 }, eq.inscribedRadiusCm as unknown as Call],
  roomBesideLitres: [
    { ...ellipseFields, diameterCm: 22, lengthCm: 30 },
    eq.roomBesideLitres as unknown as Call,
  ],
  loadCentre: [pieceFields, piece => eq.loadCentre({ pieces: [piece as unknown as eq.LoadPiece] })],
  hipMomentNm: [
    { ...pieceFields, leanDeg: 10 },
    ({ leanDeg, ...piece }) =>
      eq.hipMomentNm({ pieces: [piece as unknown as eq.LoadPiece], leanDeg: leanDeg! }),
  ],
  balancingLeanDeg: [
    { bodyKg: 75, heightCm: 175, packKg: 15, behindM: 0.18, aboveM: 0.3 },
    eq.balancingLeanDeg as unknown as Call,
  ],
  torsoLength: [{ heightCm: 170 }, eq.torsoLength as unknown as Call],
}

const mayBeNegative = new Set(['simplifiedWbgtC', 'stullWetBulbC', 'loadCentre', 'hipMomentNm'])

function numbersIn(data: unknown): number[] {
  if (typeof data === 'number') return [data]
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(numbersIn) : []
}

/** A number near the inside one, of any size, or none at all. */
const anyNumber = (inside: number) =>
  fc.oneof(
    fc.constant(inside),
    fc.double({ min: Math.min(0, 2 * inside), max: Math.max(0, 2 * inside), noNaN: true }),
    fc.double(),
    fc.constantFrom(0, -0, Number.NaN, Infinity, -Infinity, Number.MAX_VALUE, Number.MIN_VALUE, -1),
  )

describe('an equation', () => {
  it('is in this list if it is public', () => {
    const functions = Object.entries(eq).flatMap(([name, part]) => (typeof part === 'function' ? [name] : []))
    expect(Object.keys(calls).sort()).toEqual(functions.sort())
  })

  it.each(Object.entries(calls))(
    '%s gives finite numbers or names the field outside',
    (name, [inside, call]) => {
      expect(call(inside).ok).toBe(true)
      const fields = fc.record(Object.fromEntries(Object.entries(inside).map(([k, v]) => [k, anyNumber(v)])))
      fc.assert(
        fc.property(fields, given => {
          const outcome = call(given as Fields)
          if (outcome.ok) {
            const numbers = numbersIn(outcome.value)
            expect(numbers.every(Number.isFinite)).toBe(true)
            expect(Object.values(given).every(Number.isFinite)).toBe(true)
            if (!mayBeNegative.has(name)) expect(numbers.every(number => number >= 0)).toBe(true)
            return
          }
          const { min, max, unit } = outcome.limit
          expect(outcome.reason).toBe('outside-range')
          expect(unit).not.toBe('')
          const excludedEnd = name === 'santeeWatts' && outcome.got === 0
          expect(excludedEnd || !(outcome.got >= min && outcome.got <= max)).toBe(true)
        }),
        { numRuns: 300 },
      )
    },
  )

  const single = Object.entries(calls).flatMap(([name, [inside, call]]) =>
    Object.keys(inside).map(field => [name, field, inside, call] as const),
  )

  it.each(single)(
    '%s refuses a %s that is no number, endless or far off, by its name',
    (_, field, inside, call) => {
      for (const got of [Number.NaN, Infinity, -Infinity, 1e12, -1e12]) {
        expect(call({ ...inside, [field]: got })).toMatchObject({
          ok: false,
          reason: 'outside-range',
          field,
          got,
        })
      }
    },
  )
})
