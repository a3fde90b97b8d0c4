// Alternatives to an item: chosen from the shelf, told with what each changes, taken in two taps, undone in one.

import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { Ticker } from '../../src/components/frame'
import { itemName, settle } from '../../src/plan'
import { emptyShelf, type ThingFacts } from '../../src/plan/shelf'
import { applyRemedy } from '../../src/reckon'
import { changeText, formatsIn } from '../../src/report'
import { GearScreen } from '../../src/screens/gear'
import { takeThings } from '../../src/screens/gear/swaps'
import { PacksScreen } from '../../src/screens/packs'
import { actions, openTrip, reckoned, shelf } from '../../src/store'
import { replacements, swapSteps } from '../../src/store/swaps'
import { demoDraft, openDraft, pageOf, plain, withOnePack } from './compare-packs'
import { openDetails } from './details'

const BAG = 'Sleeping bag in its sack'
const need = () => {
  const result = reckoned.value!.reckoned
  if (!result.ok) throw new Error(result.problem.said)
  return result.reckoning.need
}
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const shelve = (...items: ThingFacts[]) =>
  actions.editShelf('Fill', () => ({
    ...shelf.peek(),
    things: items.map(item => ({ id: item.name!, item, changed: {} })),
  }))
const WINTER = { name: 'Winter bag', massKg: 1.9, litres: 16, group: 'Sleep' }
const SMALL: ThingFacts = { name: 'Small quilt', massKg: 0.4, litres: 1.5, litresFrom: 'filled' }
const itemId = () =>
  openTrip.value!.draft.gear.find(item => [BAG, 'Winter bag', 'Small quilt'].includes(item.name!))!.id

const open = (detail: string | null) =>
  render(
    <>
      <GearScreen detail={detail} onDetail={() => undefined} />
      <Ticker onOpen={() => undefined} />
    </>,
  )

beforeEach(() => {
  actions.editShelf('Empty', () => emptyShelf())
  openDraft(demoDraft())
  shelve(WINTER, SMALL, { name: 'Camp chair', massKg: 1 }, { name: 'Old bag', retired: true } as ThingFacts)
})
afterEach(cleanup)

const choose = (...things: string[]) => {
  const view = open(`gear/${itemId()}`)
  openDetails(screen.getByText('Alternatives'))
  for (const name of things) {
    fireEvent.input(screen.getByLabelText('Add from the shelf'), { target: { value: name } })
    press(`Add ${name} as an alternative`)
  }
  view.unmount()
}

test('the likely ones are offered first; the rest of the shelf is found by its words', () => {
  open(`gear/${itemId()}`)
  openDetails(screen.getByText('Alternatives'))
  const offered = () =>
    screen.getAllByRole('button', { name: /as an alternative$/ }).map(it => it.getAttribute('aria-label'))
  expect(offered()[0]).toBe('Add Winter bag as an alternative')
  expect(offered()).not.toContain('Add Camp chair as an alternative')
  fireEvent.input(screen.getByLabelText('Add from the shelf'), { target: { value: 'camp' } })
  expect(offered()).toEqual(['Add Camp chair as an alternative'])
  fireEvent.input(screen.getByLabelText('Add from the shelf'), { target: { value: 'kayak' } })
  expect(screen.getByText('None like it on the shelf.')).toBeTruthy()
})

test('two taps from the list take it, each told with its change; one undo brings all back', async () => {
  choose('Winter bag', 'Small quilt')
  open(null)
  const [before, gear] = [need(), openTrip.value!.draft.gear]
  press(/^or Winter bag and 1 more/)
  const take = await screen.findByRole('button', { name: /Take Winter bag.*\+[\d.]+\skg, \+[\d.]+\sL/ })
  fireEvent.click(take)
  expect(openTrip.value!.draft.gear.find(({ id }) => id === itemId())).toMatchObject(WINTER)
  const change = {
    litres: need().bodyLitres - before.bodyLitres,
    kg: need().peakLoadFullWaterKg - before.peakLoadFullWaterKg,
  }
  expect(plain(take.textContent ?? '')).not.toContain('Winter')
  expect(plain(screen.getByText(/^Changed: /).textContent ?? '')).toContain(
    plain(changeText(change, formatsIn('metric'))),
  )
  expect(screen.getByRole('button', { name: /^or Sleeping bag in its sack and 1 more/ })).toBeTruthy()
  actions.undo()
  expect(openTrip.value!.draft.gear).toEqual(gear)
  expect(shelf.value.things.map(({ id }) => id)).toEqual([
    'Winter bag',
    'Small quilt',
    'Camp chair',
    'Old bag',
  ])
})

test.each([
  ['the demo’s', 1],
  ['many', 100],
])('what is told is what the engine makes of the trip once it is taken: answers of %s packs', (_, times) => {
  const { packs } = demoDraft()
  const many = Array.from({ length: times }, (_, i) =>
    packs.map(pack => ({ ...pack, id: `${pack.id} ${i}`, name: `${pack.name} ${i}` })),
  )
  actions.editShelf('Many packs', it => ({ ...it, packs: many.flat() }))
  choose('Winter bag', 'Small quilt')
  const told = [...swapSteps(itemId())].flatMap(change => change ?? [])
  expect(told.map(({ thing }) => thing)).toEqual(['Winter bag', 'Small quilt'])
  for (const { thing, change } of told) {
    const [before, answers] = [need(), answersNow()]
    takeThings('Take', [{ item: itemId(), thing }])
    expect(change!.litres).toBe(need().bodyLitres - before.bodyLitres)
    expect(change!.kg).toBe(need().peakLoadFullWaterKg - before.peakLoadFullWaterKg)
    const others = answersNow().filter((answer, i) => answer !== answers[i])
    expect(change!.answers.map(({ answer }) => answer)).toEqual(others)
    actions.undo()
  }
  expect(told[0]!.change!.answers.length).toBeGreaterThan(0)
})

const answersNow = () => {
  const result = reckoned.value!.reckoned
  return result.ok ? result.reckoning.packs.map(({ answer }) => answer) : []
}

test('text that could not be read goes with the item it was typed at, and comes back with it', () => {
  choose('Small quilt')
  actions.setField(`gear/${itemId()}/lengthCm`, undefined, 'long')
  const path = `gear/${itemId()}/lengthCm`
  takeThings('Take', [{ item: itemId(), thing: 'Small quilt' }])
  expect(openTrip.value!.typed[path]).toBeUndefined()
  actions.undo()
  expect(openTrip.value!.typed[path]).toBe('long')
})

test('what is no longer on the shelf is said, and forgotten in one tap', () => {
  choose('Winter bag')
  actions.editShelf('Empty', () => emptyShelf())
  open(`gear/${itemId()}`)
  expect(screen.queryByRole('button', { name: /^or / })).toBeNull()
  expect(screen.getByText(/^1 alternative no longer on the shelf/)).toBeTruthy()
  press('Forget')
  expect(openTrip.value!.draft.gear.every(item => !('swaps' in item))).toBe(true)
})

describe('under a pack that fails', () => {
  test('another thing is offered beside what may be left, and one tap takes it', async () => {
    actions.editShelf('Empty the list of packs', it => ({ ...it, packs: [] }))
    openDraft(withOnePack(43, 20))
    choose('Small quilt')
    const [swap] = replacements()
    const { plan } = reckoned.value!
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText(/^What would make/))
    const label = `Take Small quilt instead of ${BAG}`
    const button = await screen.findByRole('button', { name: `Do it: ${label}` })
    expect(button.closest('li')!.textContent).toContain('if it is enough for this trip')
    fireEvent.click(button)
    expect(reckoned.value!.plan.gear).toEqual(applyRemedy(plan, { kind: 'swap', swaps: [swap!] }).gear)
    await waitFor(() => expect(screen.getByText(label)).toBeTruthy())
    actions.undo()
    expect(reckoned.value!.plan.gear.map(itemName)).toContain(BAG)
  })

  test('nothing is offered in the place of what stays at home', () => {
    choose('Small quilt')
    actions.edit('Home', draft => ({
      ...draft,
      gear: draft.gear.map(item => (item.id === itemId() ? { ...item, atHome: true } : item)),
    }))
    expect(replacements()).toEqual([])
    expect(settle(openTrip.value!.draft).leftOut).toEqual([])
  })
})
