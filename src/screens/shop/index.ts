export { ShopScreen } from './ShopScreen'
