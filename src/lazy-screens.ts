// The screens, each fetched when it is first opened.

import { later } from './components/frame'
import { loadEngine } from './store'

/** What shows an open trip needs the engine as much as its own code. */
const withEngine: typeof later = load =>
  later(async () => {
    await loadEngine()
    return load()
  })

export const TripPlace = withEngine(async () => (await import('./screens/trip')).TripPlace)
export const GearScreen = withEngine(async () => (await import('./screens/gear')).GearScreen)
export const NeedPlace = withEngine(async () => (await import('./screens/need')).NeedPlace)
export const SideAnswer = withEngine(async () => (await import('./screens/need')).SideAnswer)
export const PacksScreen = withEngine(async () => (await import('./screens/packs')).PacksScreen)
export const MoreScreen = withEngine(async () => (await import('./screens/more')).MoreScreen)
export const ShelfScreen = withEngine(async () => (await import('./screens/shelf')).ShelfScreen)
export const SheetScreen = withEngine(async () => (await import('./screens/sheet')).SheetScreen)
export const SplitScreen = withEngine(async () => (await import('./screens/party')).SplitScreen)
export const Whose = later(async () => (await import('./screens/party')).Whose)
export const HelpScreen = later(async () => (await import('./screens/help')).HelpScreen)
export const Received = later(async () => (await import('./screens/backup')).Received)
export const SharedPlan = later(async () => (await import('./screens/share')).SharedPlan)
