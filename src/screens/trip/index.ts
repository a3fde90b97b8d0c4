export { FromTrack } from './FromTrack'
export { TripScreen } from './TripScreen'
