export { GearScreen } from './GearScreen'
export { ItemEditor } from './ItemEditor'
export { HomeOfItems, type ItemHome } from './item-home'
