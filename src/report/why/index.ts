// The answers to "why?", apart from the rest of the report so that they are loaded only where they are asked for.

export { addCartridges, type CartridgePlan, gasCartridges, hasCartridges, piecesText } from './cartridges'
export { dayEnergyRanges } from './energy'
export { explain, explainAlone, needsNoPlan } from './explain'
export { fuelKgOf } from './fuel'
export { rationText } from './ration'
export type * from './types'
export { withoutPaths } from './without-paths'
export {
  kcalRangeText,
  kcalRoughText,
  kcalText,
  type Source,
  sourceText,
  standingsOf,
  standingText,
} from './words'
