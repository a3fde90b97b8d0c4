export { NeedPlace } from './NeedPlace'
export { NeedScreen } from './NeedScreen'
export { SideAnswer } from './SideAnswer'
