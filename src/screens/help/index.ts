export { HelpScreen } from './HelpScreen'
