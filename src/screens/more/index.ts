export { MoreScreen } from './MoreScreen'
