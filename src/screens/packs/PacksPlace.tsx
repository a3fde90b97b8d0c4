// The packs and the places reached from them, each fetched when it is first opened.

import { later } from '../../components/frame'
import { actions, library } from '../../store'
import { PacksScreen } from './PacksScreen'

const ShopScreen = later(async () => (await import('../shop')).ShopScreen)
const AllTripsScreen = later(async () => (await import('../trips')).AllTripsScreen)

const PacksBesideScreen = later(async () => (await import('../packs-beside')).PacksBesideScreen)
const SideBySideScreen = later(async () => (await import('../side-by-side')).SideBySideScreen)

export function PacksPlace({ detail }: { detail: string | null }) {
  const { screen } = library.value.place
  const onDetail = (to: string | null) =>
    actions.setPlace({ screen: screen === 'own-packs' ? screen : 'packs', detail: to, scrollY })
  switch (screen) {
    case 'shop':
      return <ShopScreen />
    case 'all-trips':
      return <AllTripsScreen />
    case 'packs-beside':
      return <PacksBesideScreen />
    case 'side-by-side':
      return <SideBySideScreen />
    default:
      return <PacksScreen detail={detail} onDetail={onDetail} isApart={screen === 'own-packs'} />
  }
}
