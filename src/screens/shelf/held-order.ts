// The order of the shelf as it is shown. While a thing is open it stays where it was: a row that jumped with every letter
// of its group, or with every figure of its mass, would take the field from under the finger.

import { useRef } from 'preact/hooks'
import type { Thing } from '../../plan/shelf'
import { groupOf, type Order, ordered } from './view'

interface HeldOrder {
  from: readonly Thing[]
  order: Order
  opened: string | null
  things: Thing[]
  /** The group that the open thing is shown in. */
  group: string | null
}

/** The things in an order, and the group each is shown in. `letGo` is for when the open thing is moved on purpose. */
export function useHeldOrder(from: readonly Thing[], order: Order, opened: string | null) {
  const last = useRef<HeldOrder | null>(null)
  const isLoose = useRef(false)
  const was = isLoose.current ? null : last.current
  isLoose.current = false
  if (was?.from !== from || was.order !== order || was.opened !== opened) {
    const open = from.find(({ id }) => id === opened)
    // What is added, removed or moved is shown at once.
    const isHeld = open && was?.opened === opened && was.order === order && sameIds(was.from, from)
    const byId = new Map(isHeld ? from.map(thing => [thing.id, thing]) : [])
    last.current = {
      from,
      order,
      opened,
      things: isHeld ? was.things.flatMap(({ id }) => byId.get(id) ?? []) : ordered(from, order),
      group: isHeld ? was.group : open ? groupOf(open) : null,
    }
  }
  const { things, group } = last.current!
  return {
    things,
    shownGroup: (thing: Thing) => (thing.id === opened && group !== null ? group : groupOf(thing)),
    letGo: () => {
      isLoose.current = true
    },
  }
}

const sameIds = (a: readonly Thing[], b: readonly Thing[]) =>
  a.length === b.length && a.every(({ id }, i) => id === b[i]?.id)
