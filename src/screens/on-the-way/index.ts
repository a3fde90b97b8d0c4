export { OnTheWayScreen } from './OnTheWayScreen'
export { Times } from './Times'
