export { completePlan } from './complete'
export * as defaults from './defaults'
export { CAPS, LIMITS, type Limit } from './limits'
export { type Parsed, parsePlan, parsePlanText, pathText } from './parse'
export type { Problem } from './rules'
export {
  type ItemDocument,
  type PackDocument,
  PLAN_FORMAT,
  PLAN_VERSION,
  type PlanDocument,
  type SetupDocument,
  type StopDocument,
} from './schema'
export type * from './types'
