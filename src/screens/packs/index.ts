export { PacksPlace as PacksScreen } from './PacksPlace'
