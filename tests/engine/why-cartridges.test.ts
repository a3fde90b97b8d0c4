// Whole gas cartridges for a trip: how much gas is wanted at once, and their empties as gear.

import { describe, expect, it } from 'vitest'
import { cartridgesFor } from '../../src/equations'
import { emptyDraft, type ItemDocument, type StopDocument } from '../../src/plan'
import { addCartridges, gasCartridges, hasCartridges, piecesText } from '../../src/report/why'
import { reckoned, type Small, smallPlan } from './small-plans'

const gas = {
  id: 'gas',
  massKg: 0,
  litres: 0,
  use: 'nightly',
  fuel: { kind: 'gas', boilLitres: 1.5 },
} satisfies ItemDocument
const kit = { id: 'kit', massKg: 6, litres: 20 }
const camp = (nights: number): StopDocument => ({ name: 'Camp', water: 'sure', nights, leg: { km: 10 } })
const stops: StopDocument[] = [{ name: 'Start' }, camp(2), camp(1), { name: 'End', leg: { km: 8 } }]

const trip = (small: Small = {}) => {
  const plan = smallPlan({ stops, gear: [gas, kit], ...small })
  return { plan, reckoning: reckoned(plan) }
}

describe('gas cartridges', () => {
  const cartridges = (small: Small = {}) => {
    const { plan, reckoning } = trip(small)
    return gasCartridges(plan, reckoning, 'gas')!
  }

  it('hold the gas of all nights cooked, with its margin', () => {
    const { nights, needG, choice } = cartridges()
    expect(nights).toBe(3)
    // fuelG's own example: 34.37202 g for 1.5 L.
    expect(needG).toBeCloseTo(3 * 34.37202, 3)
    expect(choice!.netG).toBeGreaterThanOrEqual(needG)
    expect(piecesText(choice!)).toBe('1 × 230 g')
  })

  it('hold only the longest stretch where gas is bought again', () => {
    const again = [...stops]
    again[2] = { ...again[2]!, resupply: true }
    expect(cartridges({ stops: again, gear: [{ ...gas, resupplied: true }, kit] }).nights).toBe(3)
    again[1] = { ...again[1]!, resupply: true }
    again[2] = { ...stops[2]! }
    expect(cartridges({ stops: again, gear: [{ ...gas, resupplied: true }, kit] }).nights).toBe(2)
  })

  it('are none for a need past what is worked out, and nothing is asked where nothing is cooked', () => {
    const winter: ItemDocument = { ...gas, fuel: { kind: 'gas', boilLitres: 50, meltLitres: 50 } }
    expect(cartridges({ gear: [winter, kit] }).choice).toBeNull()
    const provided = stops.map(stop => ({ ...stop, meals: 'provided' as const }))
    const { plan, reckoning } = trip({ stops: provided })
    expect(gasCartridges(plan, reckoning, 'gas')).toBeNull()
    expect(gasCartridges(plan, reckoning, 'kit')).toBeNull()
  })

  it('go into the gear as rigid empties marked as guesses, behind the gas, which stays', () => {
    const draft = { ...emptyDraft(), gear: [{ ...gas, group: 'Kitchen' }, { ...kit }] }
    const found = cartridgesFor({ needG: 240 })
    if (!found.ok) throw new Error('240 g is refused')
    expect(piecesText(found.value)).toBe('1 × 230 g and 1 × 100 g')
    expect(hasCartridges(draft.gear, found.value)).toBe(false)
    let ids = 0
    const next = addCartridges(draft, found.value, { after: 'gas', newId: () => `n${++ids}` })
    expect(next.gear.map(item => item.id)).toEqual(['gas', 'n1', 'n2', 'kit'])
    expect(next.gear[0]).toBe(draft.gear[0])
    expect(next.gear[2]).toEqual({
      id: 'n2',
      name: 'Gas cartridge 100 g, empty',
      group: 'Kitchen',
      count: 1,
      massKg: 0.098,
      litres: 0.43,
      build: 'rigid',
      use: 'kept',
      massFrom: 'guess',
      litresFrom: 'guess',
    })
    expect(hasCartridges(next.gear, found.value)).toBe(true)
  })
})
