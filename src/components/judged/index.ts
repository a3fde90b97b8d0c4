export { AskedCard } from './AskedCard'
export { PartlyJudged } from './PartlyJudged'
