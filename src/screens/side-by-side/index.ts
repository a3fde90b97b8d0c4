export { SideBySideScreen } from './SideBySideScreen'
