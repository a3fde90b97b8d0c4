export { PlanOffer, SharedPlan } from './SharedPlan'
export { SharePlan } from './SharePlan'
