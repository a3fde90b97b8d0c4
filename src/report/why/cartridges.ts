// Whole cartridges for the gas of a trip: how much is wanted at once, which cartridges hold it, and their empties as
// gear. Source keys: en-417, our-judgement; empty masses and outer litres are from memory and are marked guesses.

import { type CartridgeChoice, cartridgeClasses, cartridgesFor, fuelG } from '../../equations'
import { addItem, type Draft, type DraftItem, type Plan } from '../../plan'
import { type Reckoning, routeOf, stockAtMoments } from '../../reckon'
import { counted, listText } from '../../units'
import { sumOf } from './sum'
import type { Explanation, WhyContext } from './types'

export interface CartridgePlan {
  /** The most nights' gas aboard at once: from the start, or from a resupply to the next. */
  nights: number
  /** With the margin. */
  needG: number
  /** Null where so much gas is wanted that no choice is worked out. */
  choice: CartridgeChoice | null
}

/** The cartridges for a nightly gas item of the plan; null where it is none, or nothing is cooked. */
export function gasCartridges(plan: Plan, { days }: Reckoning, id: string): CartridgePlan | null {
  const item = plan.gear.find(each => each.id === id)
  if (item?.use !== 'nightly' || item.fuel?.kind !== 'gas') return null
  const perNight = fuelG(item.fuel)
  if (!perNight.ok) return null
  const stocks = stockAtMoments(
    plan,
    routeOf(plan),
    days.map(day => day.ration),
  )
  const nights = Math.max(
    ...stocks.map(({ left }) => (item.resupplied ? left.nightlyAgain : left.nightlyOnce)),
  )
  const needG = nights * item.count * perNight.value
  if (needG === 0) return null
  const choice = cartridgesFor({ needG })
  return { nights, needG, choice: choice.ok ? choice.value : null }
}

/** The gas wanted at once, and the cartridges that hold it. */
export function whyCartridges({ plan, reckoning, formats }: WhyContext, id: string): Explanation[] {
  const wanted = gasCartridges(plan, reckoning, id)
  if (!wanted) return []
  const { nights, needG, choice } = wanted
  const night = needG / nights / 1000
  const pieces = choice?.pieces ?? []
  const classOf = (netG: number) => cartridgeClasses.find(size => size.netG === netG)!
  return [
    sumOf({
      title: `Gas for ${counted(nights, 'night')}`,
      says: 'The most nights between two resupplies, each with its fuel and margin.',
      kind: 'mass',
      system: formats.system,
      show: formats.gear,
      parts: Array.from({ length: nights }, (_, i) => ({ label: `night ${i + 1}`, value: night })),
      inputs: pieces.map(({ netG, count }) => ({
        label: `${count} × ${netG} g`,
        value: `empty ${formats.gear((count * classOf(netG).emptyG) / 1000)}, ${formats.litres(count * classOf(netG).outerLitres)}`,
      })),
      range: {
        bounds: [],
        note: choice
          ? `Empty together ${formats.gear(choice.emptyG / 1000)} and ${formats.litres(choice.outerLitres)}: the lightest that hold so much, whole cartridges only.`
          : '',
      },
      sourceKeys: ['en-417', 'our-judgement'],
      ignores: 'what is left in cartridges of other trips.',
    }),
  ]
}

/** "1 × 230 g and 1 × 100 g". */
export const piecesText = ({ pieces }: CartridgeChoice): string =>
  listText(pieces.map(({ netG, count }) => `${count} × ${netG} g`))

const emptyName = (netG: number) => `Gas cartridge ${netG} g, empty`

/** Whether the gear has these empties already. */
export function hasCartridges(gear: readonly DraftItem[], { pieces }: CartridgeChoice): boolean {
  return pieces.every(({ netG, count }) =>
    gear.some(item => item.name === emptyName(netG) && (item.count ?? 1) >= count),
  )
}

/** The draft with the empties as rigid gear behind the gas. The gas itself stays what it is. */
export function addCartridges(
  draft: Draft,
  choice: CartridgeChoice,
  start: { after: string; newId: () => string },
): Draft {
  const index = draft.gear.findIndex(item => item.id === start.after)
  const group = draft.gear[index]?.group
  return choice.pieces.reduce((next, { netG, count }, i) => {
    const { emptyG, outerLitres } = cartridgeClasses.find(size => size.netG === netG)!
    const empty: Omit<DraftItem, 'id'> = {
      name: emptyName(netG),
      ...(group === undefined ? {} : { group }),
      count,
      massKg: emptyG / 1000,
      litres: outerLitres,
      build: 'rigid',
      use: 'kept',
      massFrom: 'guess',
      litresFrom: 'guess',
    }
    return addItem(next, start.newId, { with: empty, at: index + 1 + i })
  }, draft)
}
