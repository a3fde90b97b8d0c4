// The figures nobody has said, each one tap from its field; where the name tells the kind, its usual litres in pencil.

import { useEffect, useState } from 'preact/hooks'
import { type Plan, pathParts } from '../../plan'
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
  const kinds = useKinds(missing.litres.length > 0)
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
            {asks === 'litres?' && kinds ? <Usual {...{ thing, plan, kinds, shown }} /> : null}
          </li>
        ))}
      </ul>
      {more > 0 ? <p class="hint">And {more} more.</p> : null}
    </>
  )
}

type Kinds = typeof import('../../plan/kinds')

/** The table of kinds, fetched when there is something to look up in it; null until then. */
function useKinds(wanted: boolean): Kinds | null {
  const [kinds, setKinds] = useState<Kinds | null>(null)
  useEffect(() => {
    if (wanted && !kinds) void import('../../plan/kinds').then(setKinds)
  }, [wanted, kinds])
  return kinds
}

interface UsualProps {
  thing: MissingThing
  plan: Plan
  kinds: Kinds
  shown: Shown
}

/** What things of its kind take, one tap away; nothing where the name does not tell the kind. */
function Usual({ thing, plan, kinds, shown }: UsualProps) {
  const id = pathParts(thing.path)[1]
  const item = plan.gear.find(each => each.id === id)
  if (!item) return null
  const { name, use, count, massKg, massFrom } = item
  const known = { name, use, count, ...(massKg > 0 ? { massKg, massFrom } : {}) }
  const kind = kinds.kindOf(known)
  if (!kind) return null
  const range = kinds.litresOfKind(kind, known)
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
