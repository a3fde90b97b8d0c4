// The public face of the engine: `reckon` first, and what is asked of a Reckoning afterwards.

export { isTripsDoing } from './answers'
export {
  type ApartFigures,
  apartFigures,
  MEASURE_PARTS,
  type Measure,
  type MeasurePart,
  MOST_POWER,
  measureOf,
} from './apart'
export { takenAlong } from './at-home'
export { type TooLarge, tooLargeIn } from './box-fit'
export { handSpreadOf, observedFactor } from './calibration'
export { compositionAt, type ItemComposition } from './composition'
export {
  type Cover,
  type CoveringPack,
  type CoverOptions,
  type CoverSet,
  coverOf,
  type JudgedTrip,
  leastCover,
  requirementOfAll,
} from './cover'
export {
  type DryCamp,
  type DryStretch,
  type DryStretchesSoFar,
  dryStretchesOf,
  dryStretchSteps,
} from './dry-stretches'
export { type Effect, effectSteps, effectsOf } from './effects'
export {
  ADULT_ENERGY_FROM_YEARS,
  ASSUMED as ASSUMED_BODY,
  type Body,
  CAMP_FACTOR,
  rationsFrom,
  type WalkingEffort,
} from './energy'
export { frontierOf, notBeaten } from './frontier'
export {
  ASSUMED_AIR_C,
  airOfLeg,
  type HeatRate,
  heatRateAt,
  LEAST_ON_ASSUMED_AIR,
  type LegAir,
} from './heat'
export { stowsOf } from './ledger'
export { rigidInBody } from './need'
export { normalCdf, SURE, SURE_SIGMAS } from './normal'
export {
  type FoodSection,
  type NightlyLeft,
  type OnTheWay,
  onTheWay,
  type Skipped,
  sectionsFrom,
} from './on-the-way'
export { packedListAt } from './packed-list'
export {
  carriersOf,
  type PartyReckoning,
  type PersonReckoning,
  personAlone,
  placeOf,
  planOfOne,
  planOfPerson,
  type ReckonedParty,
  reckonAsShared,
  reckonParty,
  reckonPerson,
  type SharedOut,
  type SplitReckoning,
  sharedFrom,
} from './party'
export { type Provenance, provenanceOf } from './provenance'
export { stockAtMoments } from './provisions'
export { type ReachBasis, reachBasisOf } from './reach-basis'
export {
  type Binding,
  type ReachOptions,
  type ReachPoint,
  reachAt,
  reachCurve,
  type Stretch,
  stretchesOf,
} from './reach-curve'
export { type Reckoned, reckon, type Working } from './reckon'
export { remediesBy } from './remedies'
export { applyRemedy } from './remedies-apply'
export { isMended } from './remedies-candidate'
export { remediesFor } from './remedies-for'
export { isShelter, suffersOutside } from './remedies-purpose'
export { type Requirement, requirementOf, type Shortfall, shortfallOf } from './remedies-shortfall'
export { type Choosing, type Chosen, leastChoice } from './remedies-solve'
export type * from './remedies-types'
export { type Heap, ridingAt } from './riding'
export { meanFilling, type Packing, packingOf, roomFor, roomRange } from './room'
export { type Route, routeOf } from './route'
export { simulateNeed } from './simulate-need'
export { type Simulation, type SimulationOptions, simulate } from './simulation'
export { drawsFrom, xoshiro128 } from './simulation-draws'
export type * from './types'
export {
  BODY_HALF_WIDTH as bodyHalfWidth,
  LITRES_HALF_WIDTH as litresHalfWidth,
  MASS_HALF_WIDTH as massHalfWidth,
} from './uncertainty'
export {
  type ItemUncertainty,
  type PackingUncertainty,
  sigmaVIfFilled,
  sigmaVIfPacked,
  type UncertaintyShare,
  uncertaintySharesOf,
  type WorthMeasuring,
  worthMeasuring,
} from './uncertainty-shares'
export { drunkFrom, type UsedBy, usedFrom } from './used-from'
export { NEAR_RATING, VERDICTS, type VerdictAbout, type VerdictKind } from './verdict-table'
export { contentsLimitKg } from './verdicts'
export { isSource } from './water'
