export { GearDesk } from './GearDesk'
