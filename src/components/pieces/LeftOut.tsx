// What the reckoning had to do without, each entry leading to where it can be mended.

import type { LeftOut as Entry } from '../../plan'
import { goTo } from '../frame'

export function LeftOut({ entries }: { entries: Entry[] }) {
  if (entries.length === 0) return null
  const shown = entries.slice(0, 6)
  return (
    <section class="left-out" aria-label="Left out">
      <h3>Assumed or left out</h3>
      <ul>
        {shown.map(entry => (
          <li key={entry.path + entry.message}>
            <button type="button" class="link" onClick={() => goTo(entry.path)}>
              {entry.message}
            </button>
          </li>
        ))}
      </ul>
      {entries.length > shown.length ? <p class="hint">And {entries.length - shown.length} more.</p> : null}
    </section>
  )
}
