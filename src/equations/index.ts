// Published formulas, one file a subject, each with its source, units and range; they know nothing of plans.
// Sources are keys of data/sources.json.

export {
  altitudeRanges,
  boilingPointC,
  heatToBoilKj,
  heatToMeltKj,
  pressurePa,
  saturationK,
  saturationRanges,
  waterHeats,
} from './boiling'
export {
  type CartridgeChoice,
  type CartridgeClass,
  cartridgeClasses,
  cartridgeRanges,
  cartridgesFor,
} from './cartridges'
export {
  compressionHalfWidth,
  compressionRanges,
  type Fill,
  fillDensityGPerLitre,
  fills,
  insulatedLitres,
  type RolledMat,
  rolledMat,
  type Squeeze,
  type Squeezed,
  squeezedShare,
  squeezes,
} from './compression'
export { type DayTotals, dayTotalsRanges, yamamotoKcal } from './day-energy'
export {
  boxPieceRanges,
  type Fit,
  fitOf,
  type PackInner,
  packInnerRanges,
  pieceRanges,
  usualClearanceCm,
} from './fit'
export type { RigidPiece } from './fit-poses'
export { type FitRoom, fitRoom } from './fit-room'
export {
  ellipsePerimeterCm,
  ellipseRanges,
  inscribedRadiusCm,
  longestRodCm,
  pairDiameterCm,
  pairStands,
  roomBesideLitres,
} from './fit-rounds'
export {
  type FuelKind,
  type FuelProperties,
  type FuelUse,
  fuelForHeatG,
  fuelG,
  fuelKinds,
  fuelMargin,
  fuelRanges,
  snow,
} from './fuel'
export { type Air, airRanges, simplifiedWbgtC, stullRanges, stullWetBulbC, vapourPressureHPa } from './heat'
export { kcalPerWattHour, type LegEffort, type LegPower, legPowerRanges, legPowerWPerKg } from './leg-power'
export { evenSlope, type LegTotals, legRanges } from './leg-split'
export {
  balancingLeanDeg,
  hipMomentNm,
  type LoadPiece,
  leanRanges,
  loadCentre,
  loadRanges,
  upperBody,
} from './load-position'
export { type MeasuredMat, matLitres, matRanges, matReadings } from './measured-mat'
export {
  boxLitres,
  cylinderLitres,
  displacedLitres,
  filledBoxLitres,
  girthLitres,
  type Measured,
  measuringRanges,
  readingHalfWidths,
  softSqueeze,
} from './measuring'
export { naismithHours } from './naismith'
export type { Limit, Outcome, OutsideRange, Range, Ranges } from './outcome'
export { type LoadedWalk, pandolfRanges, pandolfWatts, santeeRanges, santeeWatts } from './pandolf'
export {
  type Body,
  bodyRanges,
  faoKcalPerDay,
  faoRanges,
  harrisBenedictKcalPerDay,
  mifflinStudiedAges,
  restingKcalPerDay,
  restingWPerKg,
  type Sex,
  wattsPerKcalPerDay,
} from './resting-energy'
export {
  paceFactorRanges,
  slopeRanges,
  swissHours,
  swissMinPerKm,
  toblerHours,
  toblerKmh,
} from './slope-time'
export { softCargo } from './soft-cargo'
export { type Ground, type TerrainFactor, terrainFactorRange, terrainFactors } from './terrain'
export { type Torso, torsoLength, torsoLines, torsoRanges } from './torso'
export {
  type BackpackingState,
  backpackingRanges,
  backpackingWPerKg,
  gradedWalkingRanges,
  gradedWalkingWPerKg,
  loadFactor,
} from './walking-power'
export { blendedHours, dinPace, fitPace, type Pace, paceRanges } from './walking-time'
export {
  cappedLitresPerHour,
  heatCategories,
  litresPerQuart,
  maxLitresPerDay,
  maxLitresPerHour,
  planningAnchors,
  type ThirstyRate,
  thirstyLitresPerHour,
  thirstyRamp,
  thirstyRate,
  typicalWatts,
  type WaterRate,
  type WorkClass,
  waterRate,
  waterRateRanges,
  workClassLimits,
} from './water-rate'
