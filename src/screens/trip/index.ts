export { TripScreen } from './TripScreen'
