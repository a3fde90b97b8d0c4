export { GivePacks } from './GivePacks'
export { PacksOffer } from './PacksOffer'
export { PlanOffer, SharedPlan } from './SharedPlan'
export { SharePlan } from './SharePlan'
