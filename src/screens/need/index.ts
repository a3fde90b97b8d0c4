export { NeedPlace } from './NeedPlace'
export { NeedScreen } from './NeedScreen'
