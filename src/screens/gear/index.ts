export { GearScreen } from './GearScreen'
export { ItemEditor } from './ItemEditor'
export { itemFacts } from './item-facts'
export { HomeOfItems, type ItemHome } from './item-home'
