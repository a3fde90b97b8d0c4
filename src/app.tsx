// The frame: four places at the bottom of a phone, side by side on a wide screen, the answer always in view.

import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { incoming, nextIncoming, useIncoming } from './components/files'
import {
  Header,
  later,
  Notices,
  Ticker,
  UndoBar,
  useHeadingFocus,
  useScrollBack,
  useUndoKeys,
} from './components/frame'
import { Welcome } from './screens/welcome'
import { actions, isStoring, library, loadEngine, openTrip } from './store'

/** What shows an open trip needs the engine as much as its own code. */
const withEngine: typeof later = load =>
  later(async () => {
    await loadEngine()
    return load()
  })

const TripPlace = withEngine(async () => (await import('./screens/trip')).TripPlace)
const GearScreen = withEngine(async () => (await import('./screens/gear')).GearScreen)
const NeedPlace = withEngine(async () => (await import('./screens/need')).NeedPlace)
const PacksScreen = withEngine(async () => (await import('./screens/packs')).PacksScreen)
const MoreScreen = withEngine(async () => (await import('./screens/more')).MoreScreen)
const ShelfScreen = withEngine(async () => (await import('./screens/shelf')).ShelfScreen)
const SheetScreen = withEngine(async () => (await import('./screens/sheet')).SheetScreen)
const Received = later(async () => (await import('./screens/backup')).Received)
const SharedPlan = later(async () => (await import('./screens/share')).SharedPlan)

const PLACES = [
  { screen: 'trip', label: 'Trip' },
  { screen: 'gear', label: 'Gear' },
  { screen: 'need', label: 'Need' },
  { screen: 'packs', label: 'Packs' },
] as const
type Screen = (typeof PLACES)[number]['screen']

/** Reached from the gear and shown in its place; on a wide screen in the trip's, beside the gear that it fills. */
const SHELF = 'shelf'

/** The packs apart from any trip. */
const OWN_PACKS = 'own-packs'

/** Screens that are reached from one of the four places, and are shown where it is. */
const SHOWN_AT: Readonly<Record<string, Screen>> = {
  shop: 'packs',
  'all-trips': 'packs',
  [OWN_PACKS]: 'packs',
  calibrate: 'need',
  'on-the-way': 'trip',
  [SHELF]: 'gear',
}

const WIDE = '(min-width: 75rem)'

export function App() {
  const wide = useMedia(WIDE)
  useTheme()
  useHeadStart()
  useScrollMemory()
  useUndoKeys()
  useIncoming()
  const [link, leaveLink] = useLink()
  const { place } = library.value
  const shelfStands = useShelfBeside(wide)
  const [file] = incoming.value
  const isAlone = !openTrip.value && [SHELF, OWN_PACKS].includes(place.screen)
  const isWelcome = !openTrip.value && place.screen !== 'more' && !isAlone
  const shown = file ? 'file' : link ? 'link' : isWelcome ? 'welcome' : place.screen
  useHeadingFocus(shown, place.screen === SHELF ? SHELF : screenOf(place.screen))
  // What opens from the empty app begins at its top, however far that was scrolled.
  useLayoutEffect(() => (isWelcome ? () => scrollTo(0, 0) : undefined), [isWelcome])
  useScrollBack(shown === 'need' && !wide)
  const shelfFrom = useBefore(SHELF)
  if (file)
    return (
      <main>
        <Notices />
        <Received key={`${file.name} ${incoming.value.length}`} file={file} onDone={nextIncoming} />
      </main>
    )
  if (link)
    return (
      <main>
        <Notices />
        <SharedPlan key={link} link={link} onDone={leaveLink} />
      </main>
    )
  if (isAlone)
    return (
      <>
        <main class="pane">
          <Notices />
          {place.screen === SHELF ? (
            <ShelfScreen onClose={() => actions.setPlace({ screen: 'more', detail: null, scrollY: 0 })} />
          ) : (
            <PacksScreen detail={place.detail} />
          )}
        </main>
        <div class="foot">
          <UndoBar />
        </div>
      </>
    )
  if (isWelcome)
    return (
      <>
        <Notices />
        <Welcome onMore={() => actions.setPlace({ screen: 'more', detail: null, scrollY: 0 })} />
        <div class="foot">
          <UndoBar />
        </div>
      </>
    )

  const go = (screen: string, detail: string | null = null) => {
    actions.setPlace({ screen, detail, scrollY: 0 })
    if (!detail) scrollTo(0, 0)
  }
  const onDetail = (screen: Screen) => (detail: string | null) =>
    actions.setPlace({ screen, detail, scrollY: scrollY })
  if (place.screen === 'more')
    return (
      <main>
        <Notices />
        <MoreScreen onClose={() => go('trip')} onSheet={() => go('sheet')} />
        <div class="foot">
          <UndoBar />
        </div>
      </main>
    )
  if (place.screen === 'sheet')
    return (
      <main>
        <SheetScreen onClose={() => go('more')} />
      </main>
    )

  const shownScreens = wide ? PLACES : PLACES.filter(({ screen }) => screen === screenOf(place.screen))
  const shelfIn = place.screen === SHELF || shelfStands ? (wide ? 'trip' : 'gear') : null
  const shelfBack = place.screen === SHELF && shelfFrom === 'more' ? 'more' : (shelfIn ?? 'gear')
  const shelf = <ShelfScreen onClose={() => go(shelfBack)} />
  const trip = <TripPlace detail={place.detail} onDetail={onDetail('trip')} />
  const gear = <GearScreen detail={place.detail} onDetail={onDetail('gear')} />
  return (
    <div class={wide ? 'app wide' : 'app'}>
      <Header onMore={() => go('more')} />
      <Notices />
      <main class="panes">
        {shownScreens.map(({ screen }) => (
          <section key={screen} class="pane" aria-label={screen === shelfIn ? SHELF : screen}>
            {screen === 'trip' ? (shelfIn === 'trip' ? shelf : trip) : null}
            {screen === 'gear' ? (shelfIn === 'gear' ? shelf : gear) : null}
            {screen === 'need' ? <NeedPlace /> : null}
            {screen === 'packs' ? <PacksScreen detail={place.detail} /> : null}
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

/** The place of a stored screen; that of an unknown one is the trip. */
const screenOf = (stored: string): Screen =>
  SHOWN_AT[stored] ?? PLACES.find(({ screen }) => screen === stored)?.screen ?? 'trip'

/** Side by side the shelf stays open while something else is looked at, until it is closed or the trip is. */
function useShelfBeside(wide: boolean): boolean {
  const stands = useRef(false)
  const { screen } = library.value.place
  if (screen === SHELF) stands.current = true
  else if (!wide || screen === 'trip') stands.current = false
  return stands.current
}

/** The screen that a screen was opened from, last time. */
function useBefore(of: string): string {
  const last = useRef('')
  const before = useRef('')
  const { screen } = library.value.place
  if (screen === of && last.current !== of) before.current = last.current
  last.current = screen
  return before.current
}

function useMedia(query: string): boolean {
  const list = useMemo(() => matchMedia(query), [query])
  const [matches, setMatches] = useState(list.matches)
  useEffect(() => {
    const onChange = () => setMatches(list.matches)
    list.addEventListener('change', onChange)
    return () => list.removeEventListener('change', onChange)
  }, [list])
  return matches
}

/** A plan, or packs, that came in the address. It is taken out of it at once, so that no history keeps it. */
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
  if (!/^#(plan|packs)=/.test(hash)) return null
  history.replaceState(null, '', pathname + search)
  return hash
}

/**
 * Fetches the other screens while nothing else happens, so that they open at once. Not while the whole app is stored:
 * they would be fetched twice, and would be missing where the network goes before they have come.
 */
function useHeadStart() {
  const isFree = !isStoring.value
  useEffect(() => {
    if (!isFree) return
    const timer = setTimeout(() => {
      for (const screen of [TripPlace, GearScreen, NeedPlace, PacksScreen, MoreScreen, ShelfScreen])
        screen.ahead()
    }, 1000)
    return () => clearTimeout(timer)
  }, [isFree])
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
