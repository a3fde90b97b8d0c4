export { NeedScreen } from './NeedScreen'
