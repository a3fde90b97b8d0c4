export { Choice } from './Choice'
export { LooseField, type Reading, readQuantity } from './LooseField'
