export { OwnOffer } from './OwnOffer'
export { useOwnPacking } from './own-packing'
