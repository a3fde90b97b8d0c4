// The figures nobody has said, each one tap from its field; where the name tells the kind, its usual litres in pencil.

import { pathParts } from '../../plan'
import { kindOf, litresOfKind, withKindsLitres } from '../../plan/kinds'
import { changeItem } from '../../plan/litres'
import type { Formats, Missing, MissingThing } from '../../report'
import { actions, openTrip } from '../../store'
import { useEdited } from '../fields'
import { ToField } from '../why'

const MOST_NAMED = 6

interface MissingFiguresProps {
  missing: Missing
  formats: Formats
}

export function MissingFigures({ missing, formats }: MissingFiguresProps) {
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
            <ToField name={thing.name} path={thing.path} says={asks} />
            {asks === 'litres?' ? <Usual {...{ thing, formats }} /> : null}
          </li>
        ))}
      </ul>
      {more > 0 ? <p class="hint">And {more} more.</p> : null}
    </>
  )
}

/** What things of its kind take, one tap away; nothing where the name does not tell the kind. */
function Usual({ thing, formats }: { thing: MissingThing; formats: Formats }) {
  const edited = useEdited()
  const id = pathParts(thing.path)[1]
  const item = openTrip.value?.draft.gear.find(each => each.id === id)
  const kind = item && kindOf(item)
  if (!kind) return null
  const { typical } = litresOfKind(kind, item)
  const take = () => {
    // Text that could not be read as litres goes with the field that showed it.
    if (edited.unreadAt(thing.path) !== undefined) edited.set(thing.path, undefined, null)
    actions.edit(`${thing.name}, usual litres`, draft =>
      changeItem(draft, item.id, each => withKindsLitres(each, kind)),
    )
  }
  return (
    <button type="button" class="pencil" data-figures="cited" onClick={take}>
      {`${formats.litres(typical)}, usual for: ${kind.kind}`}
    </button>
  )
}
