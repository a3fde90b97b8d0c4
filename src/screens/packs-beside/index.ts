export { PacksBesideScreen } from './PacksBesideScreen'
