export { SharedPlan } from './SharedPlan'
export { SharePlan } from './SharePlan'
