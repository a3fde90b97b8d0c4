export { FromTrack } from './FromTrack'
export { TripPlace } from './TripPlace'
export { TripScreen } from './TripScreen'
