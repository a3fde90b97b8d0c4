// Leaving things at home, or taking them along: one tap on a row, or on the heading of a group.

import { type DraftItem, setAtHome } from '../../plan'
import { actions } from '../../store'

/** What a button speaks of: one thing by its name, or all of a group. */
interface HomeButtonProps {
  items: readonly DraftItem[]
  name: string
}

export function HomeButton({ items, name }: HomeButtonProps) {
  const isHome = items.length > 0 && items.every(({ atHome }) => atHome)
  const change = () =>
    actions.edit(isHome ? `Take along ${name}` : `Leave ${name} at home`, draft =>
      setAtHome(
        draft,
        items.map(({ id }) => id),
        !isHome,
      ),
    )
  return (
    <button
      type="button"
      class="home"
      aria-pressed={isHome}
      aria-label={`Leave ${name} at home`}
      title={isHome ? 'Take along' : 'Leave at home'}
      onClick={change}
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
