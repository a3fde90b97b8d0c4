export { PackingDayScreen } from './PackingDayScreen'
