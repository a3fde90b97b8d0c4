// Leaving things at home, or taking them along: one tap on a row, or on the heading of a group.

import { type DraftItem, setAtHome } from '../../plan'
import { actions } from '../../store'

/** What a button speaks of: one thing by its name, or all of a group. */
interface HomeButtonProps {
  items: readonly DraftItem[]
  name: string
}

const areHome = (items: HomeButtonProps['items']) => items.length > 0 && items.every(({ atHome }) => atHome)

/** Leaves them at home, or takes them along if all are there. */
export function toggleHome({ items, name }: HomeButtonProps): void {
  const isHome = areHome(items)
  actions.edit(isHome ? `Take along ${name}` : `Leave ${name} at home`, draft =>
    setAtHome(
      draft,
      items.map(({ id }) => id),
      !isHome,
    ),
  )
}

/** `inGrid`: reached by the keys of a table, and `isStop` if Tab stops here. */
export function HomeButton({ items, name, inGrid }: HomeButtonProps & { inGrid?: { isStop: boolean } }) {
  const isHome = areHome(items)
  const title = isHome ? 'Take along' : 'Leave at home'
  return (
    <button
      type="button"
      class="home"
      aria-pressed={isHome}
      aria-label={`Leave ${name} at home`}
      title={inGrid ? `${title} (h)` : title}
      tabIndex={inGrid && !inGrid.isStop ? -1 : undefined}
      onClick={() => toggleHome({ items, name })}
    >
      <House />
    </button>
  )
}

const House = () => (
  <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
    <path d="M3 9.5 10 3l7 6.5V17H3z" />
  </svg>
)

/** How many are at home; how to leave one there while none is. Of one line, so that nothing moves under the finger. */
export function HomeWords({ gear }: { gear: readonly DraftItem[] }) {
  const atHome = gear.filter(item => item.atHome).length
  return (
    <p class="hint home-words">
      <House /> {atHome > 0 ? `${atHome} at home` : 'stays home'}
    </p>
  )
}
