// The things of the gear as parts of a figure, each leading to the field it comes from: the largest by name, the
// rest together, so that a long list stays a short answer and still adds up.

import { fieldPath, itemName, type Plan } from '../../plan'
import { compositionAt, type ItemComposition, type Moment, type Shares } from '../../reckon'
import type { Formats } from '../formats'
import { groupOf, kitGroups } from '../kit-groups'
import { SHARES } from '../places'
import type { Unshown } from './sum'
import type { PlanContext, WhyPart } from './types'

const MOST_NAMED = 12

type Item = Plan['gear'][number]

/** Where an item's mass is typed, or what it is worked out from. */
export const massPath = ({ id, fuel }: Item) =>
  fuel ? fieldPath('gear', id, 'fuel', 'boilLitres') : fieldPath('gear', id, 'massKg')

export const litresPath = ({ id, litresRange }: Item) =>
  litresRange ? fieldPath('gear', id, 'litresRange', 'typical') : fieldPath('gear', id, 'litres')

export const countedName = ({ name, count }: Item) =>
  `${count === 1 ? '' : `${count} × `}${itemName({ name })}`

/** Parts of one figure by item, the largest first; all beyond the twelfth in one. */
export function thingParts(
  entries: readonly { item: Item; value: number; label?: string }[],
  { path, show }: { path: (item: Item) => string; show: (value: number) => string },
): WhyPart[] {
  const sorted = entries.filter(({ value }) => value !== 0).sort((a, b) => b.value - a.value)
  const named = sorted.length > MOST_NAMED + 1 ? sorted.slice(0, MOST_NAMED) : sorted
  const rest = sorted.slice(named.length)
  const parts = named.map(({ item, value, label }) => ({
    label: label ?? countedName(item),
    value,
    text: show(value),
    path: path(item),
  }))
  if (rest.length === 0) return parts
  const value = rest.reduce((sum, entry) => sum + entry.value, 0)
  return [...parts, { label: `${rest.length} lesser items`, value, text: show(value), isRest: true }]
}

/** The load of a moment by the groups of its gear, food, fuel, water and rubbish, and each by its things. */
export function loadParts({ plan, reckoning, formats }: PlanContext, moment: number): Unshown[] {
  const { kg } = reckoning.moments[moment]!
  return bandParts(compositionAt(plan, reckoning, moment), {
    groups: kitGroups(plan),
    shares: kg,
    amount: it => it.kg,
    path: massPath,
    show: formats.gear,
  })
}

/** The things in the main body at a moment, before the gaps between them. */
export function litresParts({ plan, reckoning, formats }: PlanContext, moment: number): Unshown[] {
  const { litres } = reckoning.moments[moment]!
  return bandParts(compositionAt(plan, reckoning, moment), {
    groups: kitGroups(plan),
    shares: litres,
    amount: it => it.bodyLitres,
    path: litresPath,
    show: litresFine(formats),
  })
}

/** Of one thing: small things to the hundredth. */
const litresFine =
  ({ litres, system }: Formats) =>
  (value: number) =>
    value < 1 && system === 'metric' ? `${value.toFixed(2)} L` : litres(value)

interface Banding {
  /** What the gear is told by. */
  groups: readonly string[]
  shares: Moment['litres']
  amount: (composition: ItemComposition) => number
  path: (item: Item) => string
  show: (value: number) => string
}

function bandParts(
  composition: ItemComposition[],
  { groups, shares, amount, path, show }: Banding,
): Unshown[] {
  const of = (share: keyof Shares) =>
    composition.map(it => {
      const all = amount(it)
      const value =
        share === 'rubbish' ? all * it.rubbishShare : it.item.use === share ? all * (1 - it.rubbishShare) : 0
      return { item: it.item, value }
    })
  const gear = () =>
    groups.map((label, nth) => {
      const mine = of('kept').filter(({ item }) => groupOf(item, groups) === nth)
      const value = mine.reduce((sum, part) => sum + part.value, 0)
      return { label, value, of: thingParts(mine, { path, show }) }
    })
  return SHARES.flatMap(([share, label]): Unshown[] => {
    if (share === 'kept') return gear()
    if (share === 'water') return [{ label, value: shares.water, path: 'trip/water/reserveLitres' }]
    return [{ label, value: shares[share], of: thingParts(of(share), { path, show }) }]
  })
}
