// The figures nobody has said, each one tap from its field; where the name tells the kind, its usual litres in pencil.

import { type Plan, pathParts } from '../../plan'
import { kindOf, litresOfKind } from '../../plan/kinds'
import { changeItem, withRange } from '../../plan/litres'
import type { Missing, MissingThing, Shown } from '../../report'
import { actions } from '../../store'
import { focusField } from '../why'

const MOST_NAMED = 6

interface MissingFiguresProps {
  plan: Plan
  missing: Missing
  shown: Shown
  onGo: (path: string) => void
}

export function MissingFigures({ plan, missing, shown, onGo }: MissingFiguresProps) {
  const rows = [
    ...missing.litres.map(thing => ({ thing, asks: 'litres?' })),
    ...missing.mass.map(thing => ({ thing, asks: 'mass?' })),
  ]
  const more = rows.length - MOST_NAMED
  return (
    <>
      <ul class="to-measure">
        {rows.slice(0, MOST_NAMED).map(({ thing, asks }) => (
          <li key={thing.path}>
            <button
              type="button"
              class="quiet"
              onClick={() => {
                onGo(thing.path)
                focusField(thing.path)
              }}
            >
              <bdi class="name">{thing.name}</bdi> <span class="facts-line">{asks}</span>
            </button>
            {asks === 'litres?' ? <Usual {...{ thing, plan, shown }} /> : null}
          </li>
        ))}
      </ul>
      {more > 0 ? <p class="hint">And {more} more.</p> : null}
    </>
  )
}

interface UsualProps {
  thing: MissingThing
  plan: Plan
  shown: Shown
}

/** What things of its kind take, one tap away; nothing where the name does not tell the kind. */
function Usual({ thing, plan, shown }: UsualProps) {
  const id = pathParts(thing.path)[1]
  const item = plan.gear.find(each => each.id === id)
  if (!item) return null
  const { name, use, count, massKg, massFrom } = item
  const known = { name, use, count, ...(massKg > 0 ? { massKg, massFrom } : {}) }
  const kind = kindOf(known)
  if (!kind) return null
  const range = litresOfKind(kind, known)
  const text = `${shown.litres(range.typical)}, usual for: ${kind.kind}`
  return (
    <button
      type="button"
      class="pencil"
      data-figures="cited"
      onClick={() =>
        actions.edit(`${thing.name}, usual litres`, draft =>
          changeItem(draft, item.id, each => withRange(each, range)),
        )
      }
    >
      {text}
    </button>
  )
}
