// What came home unused: ticks that stay with the trip, and a word on the shelf for next time.

import { usePortions } from '../../components/long-list'
import { Tick } from '../../components/pieces'
import { type Draft, isMarked, itemName, mark, type Plan } from '../../plan'
import { unusedOnShelf, withUnusedNoted } from '../../plan/shelf'
import { actions, shelf } from '../../store'
import { counted } from '../../units'

export function Unused({ draft, plan }: { draft: Draft; plan: Plan }) {
  const items = plan.gear.filter(({ count, use }) => count > 0 && use !== 'daily')
  const { drawn, more } = usePortions(items.length, 'items')
  if (items.length === 0) return null
  const unused = draft.log?.unused
  const count = items.filter(({ id }) => isMarked(unused, id)).length
  const toNote = unusedOnShelf(draft, shelf.value).length
  return (
    <section aria-labelledby="unused">
      <h3 id="unused">What came home unused?</h3>
      <ul class="ticks">
        {items.slice(0, drawn).map(item => (
          <Tick
            key={item.id}
            isOn={isMarked(unused, item.id)}
            onTick={isOn =>
              actions.edit(`${isOn ? 'Unused' : 'Used'}: ${itemName(item)}`, it =>
                mark(it, 'unused', item.id, isOn),
              )
            }
          >
            <bdi class="name">{itemName(item)}</bdi>
          </Tick>
        ))}
      </ul>
      {more}
      <p class="hint">First aid, rain and warm clothes are worth carrying even unused.</p>
      {count > 0 ? (
        <p role="status">
          {counted(count, 'item')} unused. On packing day, only other trips will remind you of{' '}
          {count === 1 ? 'it' : 'them'}.
        </p>
      ) : null}
      {toNote > 0 ? (
        <button
          type="button"
          onClick={() => actions.editShelf('Note what was unused', it => withUnusedNoted(it, draft))}
        >
          Note it on the shelf ({counted(toNote, 'item')})
        </button>
      ) : null}
    </section>
  )
}
