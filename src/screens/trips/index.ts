export { AllTripsScreen } from './AllTripsScreen'
export { tripsToCompare } from './which'
