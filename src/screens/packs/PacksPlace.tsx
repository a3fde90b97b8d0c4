// The packs and the two places reached from them, each fetched when it is first opened.

import { later } from '../../components/frame'
import { library } from '../../store'
import { type PacksProps, PacksScreen } from './PacksScreen'

const ShopScreen = later(async () => (await import('../shop')).ShopScreen)
const AllTripsScreen = later(async () => (await import('../trips')).AllTripsScreen)

export function PacksPlace(props: PacksProps) {
  switch (library.value.place.screen) {
    case 'shop':
      return <ShopScreen />
    case 'all-trips':
      return <AllTripsScreen />
    default:
      return <PacksScreen {...props} />
  }
}
