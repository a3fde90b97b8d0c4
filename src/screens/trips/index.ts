export { AllTripsScreen } from './AllTripsScreen'
export { useAllTrips } from './use-all-trips'
export { MOST_COMPARED, tripsToCompare } from './which'
