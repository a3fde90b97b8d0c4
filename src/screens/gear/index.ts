export { GearScreen } from './GearScreen'
