export { AskedCard } from './AskedCard'
export { LooseField, type Reading, readQuantity } from './LooseField'
export { PartlyJudged } from './PartlyJudged'
export { WhenOpen } from './WhenOpen'
