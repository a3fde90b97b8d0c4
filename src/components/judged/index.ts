export { AskedCard } from './AskedCard'
export { PartlyJudged } from './PartlyJudged'
export { Warnings } from './Warnings'
