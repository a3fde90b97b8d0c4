// A hard container in the open trip: one tap puts the food into it.

import { useEffect, useRef, useState } from 'preact/hooks'
import { type DraftItem, foodFor, itemName, putFoodInto } from '../../plan'
import { actions, openTrip } from '../../store'
import { useItemHome } from './item-home'

export function FoodInto({ item }: { item: DraftItem }) {
  const { inTrip } = useItemHome()
  const [done, setDone] = useState(false)
  const said = useRef<HTMLParagraphElement>(null)
  // The button is gone: the focus goes to what says what came of it.
  useEffect(() => {
    if (done) said.current?.focus()
  }, [done])
  const draft = openTrip.value?.draft
  if (!inTrip || !draft || item.holdsLitres === undefined || item.inside !== undefined) return null
  const food = foodFor(draft, item.id)
  const name = item.name?.trim() || 'the container'
  if (food.length === 0)
    return done ? (
      <p ref={said} tabIndex={-1} role="status">
        The food is carried in {name}.
      </p>
    ) : null
  const put = () => {
    actions.edit(`Put the food in ${name}`, draft => putFoodInto(draft, item.id))
    setDone(true)
  }
  const names = food.slice(0, 3).map(itemName)
  return (
    <p>
      <button type="button" class="quiet" onClick={put}>
        Put the food in {name}
      </button>{' '}
      {names.join(', ')}
      {food.length > names.length ? ` and ${food.length - names.length} more` : ''}
    </p>
  )
}
