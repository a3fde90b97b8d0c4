// What one person carries, thing by thing; each may be given to one person for good, whatever is shared out.

import { useFormats } from '../../components/fields'
import { itemFacts } from '../../components/item-words'
import { usePortions } from '../../components/long-list'
import { type Draft, type DraftItem, defaults, personName, pinItem, staysWithOwner } from '../../plan'
import { actions, type OpenParty } from '../../store'

interface CarriesProps {
  draft: Draft
  party: OpenParty
  who: string
}

export function Carries({ draft, party, who }: CarriesProps) {
  const { system } = useFormats()
  const mine = draft.gear.filter(({ id, atHome }) => !atHome && party.carriers.get(id) === who)
  const { drawn, more } = usePortions(mine.length, 'items')
  if (mine.length === 0) return <p class="hint">Carries nothing.</p>
  return (
    <>
      <ul class="carried-things">
        {mine.slice(0, drawn).map(item => (
          <li key={item.id} data-figures="typed">
            <span>
              <bdi class="name">
                {(item.count ?? 1) === 1 ? '' : `${item.count} × `}
                {item.name || 'Unnamed item'}
              </bdi>{' '}
              <span class="facts-line">
                {[...itemFacts(item, system), whoseWords(draft, item)].filter(Boolean).join(', ')}
              </span>
            </span>
            {mayMove(item) ? <Pin draft={draft} item={item} /> : null}
          </li>
        ))}
      </ul>
      {more}
    </>
  )
}

/** What is worn, holds water or is its owner's alone stays with them, and what is inside goes with its container. */
const mayMove = (item: DraftItem) =>
  item.inside === undefined &&
  !staysWithOwner(item) &&
  (item.owner === undefined || (item.shareable ?? defaults.ITEM.shareable) || item.carriedBy !== undefined)

/** "Ada’s", or nothing for what is everybody's. */
const whoseWords = (draft: Draft, { owner }: DraftItem) =>
  owner === undefined ? '' : `${personName(draft, owner)}’s`

const FREE = ''

function Pin({ draft, item }: { draft: Draft; item: DraftItem }) {
  const name = item.name || 'Unnamed item'
  const change = (carrier: string) =>
    actions.edit(
      carrier ? `${name} with ${personName(draft, carrier)}` : `${name} with whoever it falls to`,
      made => pinItem(made, item.id, carrier || null),
    )
  return (
    <select
      aria-label={`Who carries ${name}`}
      value={item.carriedBy ?? FREE}
      onChange={event => change(event.currentTarget.value)}
    >
      <option value={FREE}>Shared out</option>
      {(draft.people ?? []).map(({ id }) => (
        <option key={id} value={id}>
          Always {personName(draft, id)}
        </option>
      ))}
    </select>
  )
}
