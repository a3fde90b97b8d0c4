// What each alternative to an item of the open trip would change, and what they would be in its plan. Entered only by
// what shows them, so that the first page needs none of it.

import { type Draft, type Item, type Plan, settleAny } from '../../plan'
import { alternativesOf, swapItem } from '../../plan/shelf'
import { planOfOne, type Reckoned, type Replacement, reckon } from '../../reckon'
import { openTrip, reckoned, shelf } from '..'
import { changeBetween, type LastChange } from '../change-between'

/** What taking a thing in an item's place changes; `item`: as it would be then. */
export interface SwapChange {
  thing: string
  change: LastChange | null
  item: Item
}

/** One for each alternative to the item, after steps that give nothing; none while the trip is not reckoned. */
export function* swapSteps(itemId: string): Generator<SwapChange | undefined, void> {
  const [trip, before] = [openTrip.peek(), reckoned.peek()]
  if (!trip || !before) return
  for (const { thing, draft } of swappedDrafts(trip.draft, [itemId])) {
    const settled = settleAny(draft, trip.typed)
    const item = settled.plan.gear.find(({ id }) => id === itemId)
    yield
    const plan = planOfOne(settled.plan, settled.shared, before.person)
    const after = { ...settled, plan, reckoned: yield* judgedInSlices(plan) }
    if (item) yield { thing, change: changeBetween(before, after), item }
  }
}

/** So many packs are judged in one step. */
const SLICE = 100

/** As `reckon`: what a trip needs is the same whatever packs there are, so a thousand are judged a slice a step. */
function* judgedInSlices(plan: Plan): Generator<undefined, Reckoned> {
  const first = reckon({ ...plan, packs: plan.packs.slice(0, SLICE) })
  if (!first.ok) return first
  const packs = [...first.reckoning.packs]
  for (let start = SLICE; start < plan.packs.length; start += SLICE) {
    yield
    const next = reckon({ ...plan, packs: plan.packs.slice(start, start + SLICE) })
    if (next.ok) packs.push(...next.reckoning.packs.map(judged => ({ ...judged, pack: judged.pack + start })))
  }
  return { ...first, reckoning: { ...first.reckoning, packs } }
}

/** All alternatives to what the open trip takes along, as its plan would have them. */
export function replacements(): Replacement[] {
  const trip = openTrip.peek()
  if (!trip) return []
  const taken = trip.draft.gear.flatMap(({ id, atHome, swaps }) => (swaps && !atHome ? id : []))
  const packed = new Set(trip.draft.gear.flatMap(({ atHome, shelf }) => (shelf && !atHome ? shelf.id : [])))
  return [...swappedDrafts(trip.draft, taken)].flatMap(({ item, thing, draft }) => {
    // It cannot be in the pack twice.
    if (packed.has(thing)) return []
    const made = settleAny(draft, trip.typed).plan.gear.find(({ id }) => id === item)
    return made ? { item, thing, with: made } : []
  })
}

/** The draft with each alternative to these items in turn. */
function* swappedDrafts(draft: Draft, items: readonly string[]) {
  const both = { draft, shelf: shelf.peek() }
  // Nothing is kept of these drafts, so what they put on the shelf needs no id of its own.
  const outside = { newId: () => 'as it was', now: 0 }
  for (const itemId of items) {
    const item = draft.gear.find(({ id }) => id === itemId)
    for (const { thing } of item ? alternativesOf(item, both.shelf).there : []) {
      const swapped = swapItem(both, { itemId, thingId: thing.id, ...outside })
      yield { item: itemId, thing: thing.id, draft: swapped.draft }
    }
  }
}
