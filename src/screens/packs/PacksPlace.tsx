// The packs and the two places reached from them, each fetched when it is first opened.

import { later } from '../../parts/frame'
import { library } from '../../store'
import type { Detail } from '../rows'
import { PacksScreen } from './PacksScreen'

const ShopScreen = later(async () => (await import('../shop')).ShopScreen)
const AllTripsScreen = later(async () => (await import('../trips')).AllTripsScreen)

export function PacksPlace(props: Detail) {
  switch (library.value.place.screen) {
    case 'shop':
      return <ShopScreen />
    case 'all-trips':
      return <AllTripsScreen />
    default:
      return <PacksScreen {...props} />
  }
}
