// Figures that are asked why: a sheet opens with the panel, its inputs lead to their fields, and what it offers to do is done.

import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { Why } from '../../src/components/why'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { GearScreen } from '../../src/screens/gear'
import { NeedScreen } from '../../src/screens/need'
import { TripScreen } from '../../src/screens/trip'
import { actions, library, newId, openTrip, reckoned } from '../../src/store'
import { openDetails } from './details'

beforeEach(() => {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  actions.setSystem('metric')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
})
afterEach(cleanup)

const stop = (index: number) => openTrip.value!.draft.trip.stops[index]!
const nothing = () => undefined

const button = (figure: RegExp, within_: HTMLElement = document.body) =>
  within(within_).getByText(figure, { selector: '.ask' })

/** Taps a figure and waits for its panel, which is fetched on its first opening. */
async function ask(figure: RegExp, within_?: HTMLElement) {
  const { nextElementSibling: before } = button(figure, within_)
  expect(before?.tagName).not.toBe('DIALOG')
  fireEvent.click(button(figure, within_))
  return waitFor(() => {
    const panel = button(figure, within_).nextElementSibling?.querySelector<HTMLElement>('.why-panel')
    if (!panel) throw new Error('no panel yet')
    return panel
  })
}

describe('a figure that is asked why', () => {
  test('shows equation, inputs, other rules, source with its standing, and what it leaves out', async () => {
    render(<Why about={{ kind: 'walking-time', leg: 0 }} figure="Walking" />)
    const panel = await ask(/Walking/)
    for (const text of [
      /Time blend of DIN 33466/,
      /By other rules/,
      /^DIN, .*: third-party copy\./,
      /It leaves out/,
    ])
      expect(within(panel).getByText(text)).toBeTruthy()
    expect(within(panel).getByText('12.5 km')).toBeTruthy()
  })

  test('opens a sheet that is named, and its button closes it and gives the focus back', async () => {
    render(<Why about={{ kind: 'walking-time', leg: 0 }} figure="Walking" />)
    await ask(/Walking/)
    const sheet = screen.getByRole('dialog', { name: 'Walking' })
    fireEvent.click(within(sheet).getByRole('button', { name: 'Close' }))
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    expect(document.activeElement).toBe(button(/Walking/))
  })

  test('leads to the screen and the entry of a field of its own accord', async () => {
    actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
    render(<Why about={{ kind: 'base-weight' }} figure="Base weight" />)
    const panel = await ask(/Base weight/)
    const [largest] = within(panel).getAllByRole('button', { name: /change it$/ })
    fireEvent.click(largest!)
    expect(library.value.place.screen).toBe('gear')
    expect(library.value.place.detail).toMatch(/^gear\//)
  })

  test('leads from an input to its field, also one folded away', async () => {
    render(
      <>
        <details>
          <input data-path={`trip/stops/${stop(1).id}/leg/km`} />
        </details>
        <Why about={{ kind: 'walking-time', leg: 0 }} figure="Walking" />
      </>,
    )
    const panel = await ask(/Walking/)
    fireEvent.click(within(panel).getByRole('button', { name: /^Distance, 12.5\s?km: change it$/ }))
    const path = `trip/stops/${stop(1).id}`
    expect(library.value.place).toMatchObject({ screen: 'trip', detail: path })
    await waitFor(() => expect(document.activeElement?.getAttribute('data-path')).toBe(`${path}/leg/km`))
    expect(document.activeElement?.closest('details')?.open).toBe(true)
  })
})

describe('a leg', () => {
  const editor = () => document.getElementById(`edit-${stop(1).id}`)!

  test('takes a typed time, and gives the computed one back on one press, undoable', () => {
    render(<TripScreen detail={`trip/stops/${stop(1).id}`} onDetail={nothing} />)
    const computed = reckoned.value?.reckoned.ok ? reckoned.value.reckoned.reckoning.legs[0]!.hours : 0
    expect(within(editor()).queryByText('Use the computed time')).toBeNull()
    actions.setField(`trip/stops/${stop(1).id}/leg/hours`, computed + 1, null)
    cleanup()
    render(<TripScreen detail={`trip/stops/${stop(1).id}`} onDetail={nothing} />)
    fireEvent.click(within(editor()).getByText('Use the computed time'))
    expect(stop(1).leg?.hours).toBeUndefined()
    actions.undo()
    expect(stop(1).leg?.hours).toBe(computed + 1)
  })

  test('answers for its water only where that comes from heat', async () => {
    render(<TripScreen detail={`trip/stops/${stop(1).id}`} onDetail={nothing} />)
    expect(within(editor()).queryByText(/^Water .* in all/)).toBeNull()
    actions.setField('trip/water/litresPerHour', 'from-heat', null)
    cleanup()
    render(<TripScreen detail={`trip/stops/${stop(1).id}`} onDetail={nothing} />)
    const panel = await ask(/^Water .* in all/, editor())
    expect(within(panel).getByText(/Planning rates of ours/)).toBeTruthy()
    expect(within(panel).getAllByText(/± 0.24/)).toHaveLength(2)
  })
})

describe('the need', () => {
  test('shows each day’s energy as a range, and leads to the ration where it follows the energy', () => {
    actions.setField('trip/meals/ration', 'energy', null)
    const food = openTrip.value!.draft.gear.find(item => item.use === 'daily')!
    actions.setField(`gear/${food.id}/kcalPerKg`, 4300, null)
    render(<NeedScreen />)
    const days = reckoned.value?.reckoned.ok ? reckoned.value.reckoned.reckoning.days.length : 0
    expect(days).toBeGreaterThan(2)
    openDetails(screen.getByText('Day by day'))
    expect(screen.getAllByText(/^Energy .* to .* kcal$/, { selector: '.ask' })).toHaveLength(days)
    expect(screen.getAllByText(/^Eats .* of a full ration$/)).toHaveLength(days)
  })
})

describe('gas', () => {
  test('adds its whole cartridges as empties in one undoable edit, once', () => {
    const gas = 'gas'
    actions.setField(`gear/${gas}/fuel`, { kind: 'gas', boilLitres: 2 }, null)
    const before = openTrip.value!.draft.gear.length
    const show = () => render(<GearScreen detail={`gear/${gas}`} onDetail={nothing} />)
    show()
    expect(
      screen.getByText(/of gas needed with margin for 3 nights; the empties stay in the load/),
    ).toBeTruthy()
    expect(screen.getByText(/our estimate, not checked against a source/)).toBeTruthy()
    fireEvent.click(screen.getByText('Add these cartridges to the gear'))
    expect(openTrip.value!.draft.gear.length).toBeGreaterThan(before)
    cleanup()
    show()
    expect(screen.queryByText('Add these cartridges to the gear')).toBeNull()
    actions.undo()
    expect(openTrip.value!.draft.gear).toHaveLength(before)
  })
})
