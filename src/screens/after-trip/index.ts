export { AfterTripScreen } from './AfterTripScreen'
