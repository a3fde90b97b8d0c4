export { PacksScreen } from './PacksScreen'
