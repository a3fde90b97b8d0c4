// What an item may be instead, each with what that changes, and one tap from it.

import { useFormats, useSystem } from '../../../components/fields'
import { itemFacts } from '../../../components/item-words'
import { Why } from '../../../components/why'
import { type DraftItem, itemName } from '../../../plan'
import { type Alternative, alternativesOf, removeSwaps } from '../../../plan/shelf'
import { formatsIn, swapText } from '../../../report'
import { actions, shelf } from '../../../store'
import { capital, counted } from '../../../units'
import { takeThings } from './take'
import { type SwapChanges, useSwapChanges } from './use-swap-changes'
import './swaps.css'

interface ChoicesProps {
  item: DraftItem
  /** With a button for each that takes it out of the choice. */
  editable?: boolean
}

export function Choices({ item, editable = false }: ChoicesProps) {
  const { there, gone } = alternativesOf(item, shelf.value)
  const changes = useSwapChanges(item)
  const remove = (things: string[], name: string) =>
    actions.edit(`Remove ${name} as an alternative`, draft => removeSwaps(draft, item.id, things))
  return (
    <>
      {there.length > 0 ? (
        <div class="swaps" data-figures="why">
          <ul>
            {there.map((choice, i) => (
              // By its place: swapped, the same button brings back what was before, and keeps the focus.
              <li key={i}>
                <Choice item={item} choice={choice} changes={changes} />
                {editable ? (
                  <button
                    type="button"
                    class="quiet"
                    aria-label={`Remove ${itemName(choice.facts)} as an alternative`}
                    onClick={() => remove([choice.thing.id], itemName(choice.facts))}
                  >
                    Remove
                  </button>
                ) : null}
              </li>
            ))}
          </ul>
          <WhySwaps item={item} there={there} changes={changes} />
        </div>
      ) : null}
      {gone.length > 0 ? (
        <p class="hint">
          {counted(gone.length, 'alternative')} no longer on the shelf.{' '}
          <button type="button" class="link" onClick={() => remove(gone, counted(gone.length, 'item'))}>
            Forget
          </button>
        </p>
      ) : null}
    </>
  )
}

interface ChoiceProps {
  item: DraftItem
  choice: Alternative
  changes: SwapChanges | null
}

function Choice({ item, choice: { thing, facts }, changes }: ChoiceProps) {
  const system = useSystem()
  const change = changes?.get(thing.id)
  const name = itemName(facts)
  const take = () =>
    takeThings(`Take ${name} instead of ${itemName(item)}`, [{ item: item.id, thing: thing.id }])
  return (
    <button type="button" class="swap" onClick={take}>
      <span class="name">
        Take <bdi>{name}</bdi>
      </span>
      <span class="facts-line" data-figures="typed">
        {itemFacts(facts, system).join(', ')}
      </span>
      <span class="cost">{change ? capital(swapText(change, formatsIn(system))) : '…'}</span>
    </button>
  )
}

function WhySwaps({
  item,
  there,
  changes,
}: {
  item: DraftItem
  there: Alternative[]
  changes: SwapChanges | null
}) {
  const formats = useFormats()
  const things = there.flatMap(({ thing, facts }) => {
    const change = changes?.get(thing.id)
    return change ? [{ name: itemName(facts), text: swapText(change, formats) }] : []
  })
  return <Why about={{ kind: 'swaps', name: itemName(item), things }} figure="What each changes" />
}
