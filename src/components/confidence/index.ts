export { OwnOffer } from './OwnOffer'
export { useOwnPackings } from './own-packing'
