export { CompareButton } from './CompareButton'
export { besideTrips, chosenSetups, keyOf, MOST_BESIDE, setBeside, takeOut, tickTrip } from './chosen'
