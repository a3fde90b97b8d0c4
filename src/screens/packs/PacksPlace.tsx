// The packs and the places reached from them, each fetched when it is first opened.

import { later } from '../../components/frame'
import { library } from '../../store'
import { ListAndPage } from './ListAndPage'

const ShopScreen = later(async () => (await import('../shop')).ShopScreen)
const AllTripsScreen = later(async () => (await import('../trips')).AllTripsScreen)

const PacksBesideScreen = later(async () => (await import('../packs-beside')).PacksBesideScreen)
const SideBySideScreen = later(async () => (await import('../side-by-side')).SideBySideScreen)

export function PacksPlace({ detail, isDesk = false }: { detail: string | null; isDesk?: boolean }) {
  const { screen } = library.value.place
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
      return <ListAndPage {...{ detail, isDesk }} isApart={screen === 'own-packs'} />
  }
}
