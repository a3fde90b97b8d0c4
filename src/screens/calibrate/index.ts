export { CalibrateScreen } from './CalibrateScreen'
