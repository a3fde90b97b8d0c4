// The frame: four places at the bottom of a phone; at a desk answer and places in a column at the side, the chosen place
// over the rest. The answer is always in view.

import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { incoming, nextIncoming, useIncoming, useLink } from './components/files'
import {
  Header,
  later,
  Notices,
  Ticker,
  UndoBar,
  useHeadingFocus,
  useMedia,
  useScrollBack,
  useUndoKeys,
} from './components/frame'
import { EmptyApp } from './screens/welcome'
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
const SideAnswer = withEngine(async () => (await import('./screens/need')).SideAnswer)
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

/** Reached from the gear and shown in its place; at a desk beside the gear that it fills. */
const SHELF = 'shelf'

/** The packs apart from any trip. */
const OWN_PACKS = 'own-packs'

/** What is opened without a trip too. */
const ALONE: readonly string[] = [SHELF, OWN_PACKS]

/** Screens that are reached from one of the four places, and are shown where it is. */
const SHOWN_AT: Readonly<Record<string, Screen>> = {
  shop: 'packs',
  'all-trips': 'packs',
  'side-by-side': 'packs',
  [OWN_PACKS]: 'packs',
  calibrate: 'need',
  'on-the-way': 'trip',
  [SHELF]: 'gear',
}

/** What opens from a place, and is listed beneath the places at a desk. */
const FROM_PLACES = [
  { screen: 'shop', label: 'At the shop' },
  { screen: 'all-trips', label: 'All my trips' },
  { screen: 'side-by-side', label: 'Side by side' },
  { screen: 'own-packs', label: 'My packs' },
  { screen: 'on-the-way', label: 'On the way' },
  { screen: SHELF, label: 'Shelf' },
  { screen: 'calibrate', label: 'Your own packing' },
] as const

const WIDE = '(min-width: 56.25rem)'

export function App() {
  const wide = useMedia(WIDE)
  useTheme()
  useHeadStart()
  useScrollMemory()
  useUndoKeys()
  useIncoming()
  const [link, leaveLink] = useLink()
  const { place } = library.value
  const [shelfStands, closeBeside] = useShelfBeside(wide)
  const [file] = incoming.value
  const isAlone = !openTrip.value && ALONE.includes(place.screen)
  const isWelcome = isEmptyApp()
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
  if (isWelcome) return <EmptyApp />

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

  const here = screenOf(place.screen)
  const shelfBack = place.screen === SHELF && shelfFrom === 'more' ? 'more' : 'gear'
  const closeShelf = () => {
    closeBeside()
    go(shelfBack)
  }
  const hasShelf = place.screen === SHELF || shelfStands
  const hasGear = here === 'gear' && (wide || !hasShelf)
  return (
    <div class={wide ? 'app wide' : 'app'}>
      <Header onMore={() => go('more')} />
      <Notices />
      <div class={wide ? 'desk' : undefined}>
        {wide ? (
          <aside class="side" aria-label="Answer and places">
            <SideAnswer />
            <Places here={here} onGo={go} />
            <nav class="side-more" aria-label="More places">
              {FROM_PLACES.map(({ screen, label }) => (
                <button key={screen} type="button" class="link" onClick={() => go(screen)}>
                  {label}
                </button>
              ))}
            </nav>
          </aside>
        ) : null}
        <main class={hasShelf && hasGear ? 'panes two' : 'panes'}>
          {hasShelf ? (
            <section class="pane" aria-label={SHELF}>
              <ShelfScreen onClose={closeShelf} />
            </section>
          ) : null}
          {hasShelf && !hasGear ? null : (
            <section key={here} class="pane" aria-label={here}>
              {here === 'trip' ? <TripPlace detail={place.detail} onDetail={onDetail('trip')} /> : null}
              {here === 'gear' ? <GearScreen detail={place.detail} onDetail={onDetail('gear')} /> : null}
              {here === 'need' ? <NeedPlace isDesk={wide} /> : null}
              {here === 'packs' ? <PacksScreen detail={place.detail} /> : null}
            </section>
          )}
        </main>
      </div>
      <div class="foot">
        <UndoBar />
        {wide || place.screen === 'need' ? null : <Ticker onOpen={() => go('need')} />}
        {wide ? null : <Places here={here} onGo={go} />}
      </div>
    </div>
  )
}

/** Whether there is no trip to show, and nothing was opened that needs none. */
export const isEmptyApp = () => !openTrip.value && !['more', ...ALONE].includes(library.value.place.screen)

function Places({ here, onGo }: { here: Screen; onGo: (screen: Screen) => void }) {
  return (
    <nav class="tabs" aria-label="Places">
      {PLACES.map(({ screen, label }) => (
        <button
          key={screen}
          type="button"
          aria-current={screen === here ? 'page' : undefined}
          onClick={() => onGo(screen)}
        >
          {label}
        </button>
      ))}
    </nav>
  )
}

/** The place of a stored screen; that of an unknown one is the trip. */
const screenOf = (stored: string): Screen =>
  SHOWN_AT[stored] ?? PLACES.find(({ screen }) => screen === stored)?.screen ?? 'trip'

/** At a desk the shelf stays open beside the gear until it is closed or another place is looked at. */
function useShelfBeside(wide: boolean) {
  const stands = useRef(false)
  const { screen } = library.value.place
  if (screen === SHELF) stands.current = wide
  else if (!wide || screenOf(screen) !== 'gear') stands.current = false
  const close = () => {
    stands.current = false
  }
  return [stands.current, close] as const
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
