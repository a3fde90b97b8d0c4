export { AllTripsScreen } from './AllTripsScreen'
export { MOST_COMPARED, tripsToCompare } from './which'
