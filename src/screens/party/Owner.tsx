// Of an item, with several people: whose it is, who carries it, and whether others than its owner may.

import { Field, SelectOne } from '../../components/fields'
import { type DraftItem, fieldPath, personName, setOwner, staysWithOwner } from '../../plan'
import { actions, openTrip } from '../../store'

/** Stands for everybody, and for whoever a thing falls to. */
const ALL = ''

export function Owner({ item }: { item: DraftItem }) {
  const draft = openTrip.value?.draft
  if (!draft?.people) return null
  const people = draft.people.map(({ id }) => ({ value: id, label: personName(draft, id) }))
  const at = (field: string) => fieldPath('gear', item.id, field)
  const stays = staysWithOwner(item)
  const isInside = item.inside !== undefined
  return (
    <>
      <div class="fields">
        <SelectOne
          label="Whose it is"
          options={[{ value: ALL, label: stays ? 'Nobody’s yet' : 'Everybody’s' }, ...people]}
          chosen={item.owner ?? ALL}
          onChoose={owner =>
            actions.edit(`${item.name || 'Unnamed item'}, owner`, made =>
              setOwner(made, [item.id], owner || null),
            )
          }
        />
        {stays || isInside ? null : (
          <Field path={at('carriedBy')} options={[{ value: ALL, label: 'Whoever it falls to' }, ...people]} />
        )}
      </div>
      {isInside ? <p class="hint">It is carried with what it is in.</p> : null}
      {stays && !isInside ? <p class="hint">What is worn or holds water stays with its owner.</p> : null}
      {item.owner === undefined || stays || isInside ? null : <Field path={at('shareable')} />}
    </>
  )
}
