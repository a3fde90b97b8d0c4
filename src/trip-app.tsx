// The frame of an open trip: four places at the bottom of a phone; at a desk answer and places in a column at the side,
// the chosen place over the rest. The answer is always in view.

import { Header, Notices, Ticker, TripUndoBar } from './components/frame'
import {
  GearScreen,
  NeedPlace,
  PacksScreen,
  ShelfScreen,
  SideAnswer,
  SplitScreen,
  TripPlace,
  Whose,
} from './lazy-screens'
import { FROM_PLACES, PLACES, type Place, SHELF, SPLIT } from './places'
import { actions, library, person } from './store'

interface TripAppProps {
  wide: boolean
  here: Place
  /** Whether the shelf is shown: in the place of the gear, at a desk beside it. */
  hasShelf: boolean
  closeShelf: () => void
  go: (screen: string) => void
}

/** Screens that tell the answer themselves: at the shop other figures are said aloud than what is expected. */
const TELLING: ReadonlySet<string> = new Set(['need', 'shop'])

export function TripApp({ wide, here, hasShelf, closeShelf, go }: TripAppProps) {
  const { place } = library.value
  const hasGear = here === 'gear' && (wide || !hasShelf)
  const isSplit = place.screen === SPLIT
  const onDetail = (screen: Place) => (detail: string | null) => actions.setPlace({ screen, detail, scrollY })
  return (
    <div class={wide ? 'app wide' : 'app'}>
      <Header onMore={() => go('more')} />
      <Notices />
      <div class={wide ? 'desk' : undefined}>
        {wide ? (
          <aside class="side" aria-label="Answer and places">
            {person.value === null ? null : <Whose />}
            <SideAnswer />
            <Places here={here} onGo={go} />
            <nav class="side-more" aria-label="More places">
              {FROM_PLACES.filter(({ screen }) => screen !== SPLIT || person.value !== null).map(
                ({ screen, label }) => (
                  <button key={screen} type="button" class="link" onClick={() => go(screen)}>
                    {label}
                  </button>
                ),
              )}
            </nav>
          </aside>
        ) : null}
        <main class={hasShelf && hasGear ? 'panes two' : 'panes'}>
          {wide || person.value === null || isSplit ? null : <Whose />}
          {hasShelf ? (
            <section class="pane" aria-label={SHELF}>
              <ShelfScreen onClose={closeShelf} />
            </section>
          ) : null}
          {hasShelf && !hasGear ? null : (
            <section key={here} class="pane" aria-label={here}>
              {here === 'trip' ? <TripPlace detail={place.detail} onDetail={onDetail('trip')} /> : null}
              {isSplit ? (
                <SplitScreen />
              ) : here === 'gear' ? (
                <GearScreen detail={place.detail} onDetail={onDetail('gear')} isDesk={wide} />
              ) : null}
              {here === 'need' ? <NeedPlace isDesk={wide} /> : null}
              {here === 'packs' ? <PacksScreen detail={place.detail} isDesk={wide} /> : null}
            </section>
          )}
        </main>
      </div>
      <div class="foot">
        <TripUndoBar />
        {wide || TELLING.has(place.screen) ? null : <Ticker onOpen={() => go('need')} />}
        {wide ? null : <Places here={here} onGo={go} />}
      </div>
    </div>
  )
}

function Places({ here, onGo }: { here: Place; onGo: (screen: Place) => void }) {
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
