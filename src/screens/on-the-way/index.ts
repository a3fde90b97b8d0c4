export { OnTheWayScreen } from './OnTheWayScreen'
