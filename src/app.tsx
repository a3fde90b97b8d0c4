// The frame: four places at the bottom of a phone, side by side on a wide screen, the answer always in view.

import { useEffect, useLayoutEffect, useState } from 'preact/hooks'
import { Header, later, Notices, Ticker, UndoBar } from './parts/frame'
import { Welcome } from './screens/welcome'
import { actions, library, loadEngine, openTrip } from './store'

/** What shows an open trip needs the engine as much as its own code. */
const withEngine: typeof later = load =>
  later(async () => {
    await loadEngine()
    return load()
  })

const TripScreen = withEngine(async () => (await import('./screens/trip')).TripScreen)
const GearScreen = withEngine(async () => (await import('./screens/gear')).GearScreen)
const NeedScreen = withEngine(async () => (await import('./screens/need')).NeedScreen)
const PacksScreen = withEngine(async () => (await import('./screens/packs')).PacksScreen)
const MoreScreen = withEngine(async () => (await import('./screens/more')).MoreScreen)
const SheetScreen = withEngine(async () => (await import('./screens/sheet')).SheetScreen)
const SharedPlan = later(async () => (await import('./screens/share')).SharedPlan)

const PLACES = [
  { screen: 'trip', label: 'Trip' },
  { screen: 'gear', label: 'Gear' },
  { screen: 'need', label: 'Need' },
  { screen: 'packs', label: 'Packs' },
] as const
type Screen = (typeof PLACES)[number]['screen']
/** Places reached from the packs, shown where these are. */
const AMONG_PACKS = ['shop', 'all-trips']

const WIDE = '(min-width: 75rem)'

export function App() {
  const wide = useMedia(WIDE)
  useTheme()
  useHeadStart()
  useScrollMemory()
  const [link, leaveLink] = useLink()
  const { place } = library.value
  if (link)
    return (
      <main>
        <Notices />
        <SharedPlan key={link} link={link} onDone={leaveLink} />
      </main>
    )
  if (!openTrip.value && place.screen !== 'more')
    return (
      <>
        <Notices />
        <Welcome />
      </>
    )

  const go = (screen: string, detail: string | null = null) => {
    actions.setPlace({ screen, detail, scrollY: 0 })
    if (!detail) scrollTo(0, 0)
  }
  const onDetail = (screen: Screen) => (detail: string | null) =>
    actions.setPlace({ screen, detail, scrollY: scrollY })
  const onGo = (path: string) => go(screenOf(path), detailOf(path))

  if (place.screen === 'more')
    return (
      <main>
        <Notices />
        <MoreScreen onClose={() => go('trip')} onSheet={() => go('sheet')} />
      </main>
    )
  if (place.screen === 'sheet')
    return (
      <main>
        <SheetScreen onClose={() => go('more')} />
      </main>
    )

  const shownScreens = wide ? PLACES : PLACES.filter(({ screen }) => screen === screenOf(place.screen))
  return (
    <div class={wide ? 'app wide' : 'app'}>
      <Header onMore={() => go('more')} />
      <Notices />
      <main class="panes">
        {shownScreens.map(({ screen }) => (
          <section key={screen} class="pane" aria-label={screen}>
            {screen === 'trip' ? <TripScreen detail={place.detail} onDetail={onDetail('trip')} /> : null}
            {screen === 'gear' ? <GearScreen detail={place.detail} onDetail={onDetail('gear')} /> : null}
            {screen === 'need' ? <NeedScreen onGo={onGo} /> : null}
            {screen === 'packs' ? <PacksScreen detail={place.detail} onDetail={onDetail('packs')} /> : null}
          </section>
        ))}
      </main>
      <div class="foot">
        <UndoBar />
        {wide || place.screen === 'need' ? null : <Ticker onOpen={() => go('need')} />}
        {wide ? null : (
          <nav class="tabs" aria-label="Places">
            {PLACES.map(({ screen, label }) => (
              <button
                key={screen}
                type="button"
                aria-current={screen === screenOf(place.screen) ? 'page' : undefined}
                onClick={() => go(screen)}
              >
                {label}
              </button>
            ))}
          </nav>
        )}
      </div>
    </div>
  )
}

/** Settings about how things pack; the others are thresholds for packs. */
const PACKING = ['rigidPacking', 'softPacking', 'fillEfficiency']

/** The place a path or a stored screen name leads to; anything unknown is the trip. */
function screenOf(path: string): Screen {
  const [head = '', field = ''] = path.split('/')
  if (head === 'settings') return PACKING.includes(field) ? 'gear' : 'packs'
  if (AMONG_PACKS.includes(head)) return 'packs'
  return PLACES.find(({ screen }) => screen === head)?.screen ?? 'trip'
}

/** The list entry a field path is about: `gear/<id>/massKg` opens `gear/<id>`. */
function detailOf(path: string): string | null {
  const parts = path.split('/')
  const depth = path.startsWith('trip/stops/') ? 3 : /^(gear|packs)\//.test(path) ? 2 : 0
  return depth ? parts.slice(0, depth).join('/') : null
}

function useMedia(query: string): boolean {
  const [matches, setMatches] = useState(() => matchMedia(query).matches)
  useEffect(() => {
    const list = matchMedia(query)
    const onChange = () => setMatches(list.matches)
    list.addEventListener('change', onChange)
    return () => list.removeEventListener('change', onChange)
  }, [query])
  return matches
}

/** A plan that came in the address. It is taken out of it at once, so that no history keeps it. */
function useLink() {
  const [link, setLink] = useState(takeLink)
  useEffect(() => {
    const take = () => setLink(before => takeLink() ?? before)
    addEventListener('hashchange', take)
    return () => removeEventListener('hashchange', take)
  }, [])
  return [link, () => setLink(null)] as const
}

function takeLink() {
  const { hash, pathname, search } = location
  if (!hash.startsWith('#plan=')) return null
  history.replaceState(null, '', pathname + search)
  return hash
}

/** Fetches the other screens while nothing else happens, so that they open at once. */
function useHeadStart() {
  useEffect(() => {
    const timer = setTimeout(() => {
      for (const screen of [TripScreen, GearScreen, NeedScreen, PacksScreen, MoreScreen]) screen.ahead()
    }, 1000)
    return () => clearTimeout(timer)
  }, [])
}

function useTheme() {
  const { theme } = library.value
  useLayoutEffect(() => {
    if (theme === 'auto') delete document.documentElement.dataset.theme
    else document.documentElement.dataset.theme = theme
  }, [theme])
}

/** A reload comes back to the same spot; so does the return from another app that had the page dropped. */
function useScrollMemory() {
  useLayoutEffect(() => {
    scrollTo(0, library.value.place.scrollY)
    const remember = () => {
      if (library.value.place.scrollY !== scrollY) actions.setPlace({ ...library.value.place, scrollY })
    }
    addEventListener('scrollend', remember)
    addEventListener('pagehide', remember)
    return () => {
      removeEventListener('scrollend', remember)
      removeEventListener('pagehide', remember)
    }
  }, [])
}
