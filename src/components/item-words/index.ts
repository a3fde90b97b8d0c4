export { itemFacts, USES } from './item-facts'
export { rangeInWords, rangeOf } from './kind-words'
