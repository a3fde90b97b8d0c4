// What the page shows: a file or a link that was opened, the welcome, what stands alone, or the open trip.

import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { incoming, nextIncoming, useIncoming, useLink } from './components/files'
import {
  later,
  Notices,
  toTop,
  UndoBar,
  useBefore,
  useHeadingFocus,
  useMedia,
  useScrollBack,
  useUndoKeys,
} from './components/frame'
import {
  GearScreen,
  HelpScreen,
  MoreScreen,
  NeedPlace,
  PacksScreen,
  Received,
  SharedPlan,
  SheetScreen,
  ShelfScreen,
  TripPlace,
} from './lazy-screens'
import { ALONE, HELP, nameOfScreen, placeOfScreen, SHELF } from './places'
import { EmptyApp } from './screens/welcome'
import { actions, isStoring, library, openTrip } from './store'

export const TripApp = later(async () => (await import('./trip-app')).TripApp)

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
  usePageTitle(shown)
  useHeadingFocus(shown, place.screen === SHELF ? SHELF : placeOfScreen(place.screen))
  // What opens from the empty app begins at its top, however far that was scrolled.
  useLayoutEffect(() => (isWelcome ? () => scrollTo(0, 0) : undefined), [isWelcome])
  useScrollBack(shown === 'need' && !wide)
  const shelfFrom = useBefore(SHELF)
  const helpFrom = useBefore(HELP) || 'trip'
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
  if (place.screen === HELP)
    return (
      <main>
        <Notices />
        <HelpScreen isDesk={wide} onClose={() => toTop(helpFrom)} />
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
            <PacksScreen detail={place.detail} isDesk={wide} />
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

  const here = placeOfScreen(place.screen)
  const shelfBack = place.screen === SHELF && shelfFrom === 'more' ? 'more' : 'gear'
  const closeShelf = () => {
    closeBeside()
    go(shelfBack)
  }
  const hasShelf = place.screen === SHELF || shelfStands
  return <TripApp {...{ wide, here, hasShelf, closeShelf, go }} />
}

/** Whether there is no trip to show, and nothing was opened that needs none. */
export const isEmptyApp = () => !openTrip.value && !['more', ...ALONE].includes(library.value.place.screen)

/** At a desk the shelf stays open beside the gear until it is closed or another place is looked at. */
function useShelfBeside(wide: boolean) {
  const stands = useRef(false)
  const { screen } = library.value.place
  if (screen === SHELF) stands.current = wide
  else if (!wide || placeOfScreen(screen) !== 'gear') stands.current = false
  const close = () => {
    stands.current = false
  }
  return [stands.current, close] as const
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
      for (const screen of [TripApp, TripPlace, GearScreen, NeedPlace, PacksScreen, MoreScreen, ShelfScreen])
        screen.ahead()
    }, 1000)
    return () => clearTimeout(timer)
  }, [isFree])
}

/** Tells tabs and what reads pages aloud apart by screen and trip. */
function usePageTitle(shown: string) {
  const trip = openTrip.value?.draft.name
  useEffect(() => {
    document.title = [nameOfScreen(shown), trip, 'Pack Reckoner'].filter(Boolean).join(' · ')
  }, [shown, trip])
}

function useTheme() {
  const { theme, brightSun, largeTargets } = library.value
  useLayoutEffect(() => {
    const { dataset } = document.documentElement
    const mark = (name: string, value: string | false | undefined) => {
      if (value) dataset[name] = value
      else delete dataset[name]
    }
    mark('theme', theme !== 'auto' && theme)
    mark('sun', brightSun && 'bright')
    mark('targets', largeTargets && 'large')
  }, [theme, brightSun, largeTargets])
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
