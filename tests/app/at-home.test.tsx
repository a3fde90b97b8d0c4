// Things left at home: one tap, told at once and undone, apart on the sheet, kept in files, tables, kits and on the shelf.

import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import demo from '../../data/demo-plan.json'
import { Ticker, TripUndoBar } from '../../src/components/frame'
import { addTable, gearCsv, guessLayout, readGrid, readRows, shelveTable } from '../../src/files/csv'
import { emptyDraft, fromPlanDocument, parsePlan, settle, toPlanDocument } from '../../src/plan'
import { emptyShelf, linesFrom, packThings, putOnShelf } from '../../src/plan/shelf'
import { changeOf, changeText, formatsIn } from '../../src/report'
import { allTripsSteps } from '../../src/report/compare-packs'
import { GearScreen } from '../../src/screens/gear'
import { gearOrder } from '../../src/screens/gear/order'
import { applyRemedyToDraft } from '../../src/screens/packs/apply-remedy'
import { SheetScreen } from '../../src/screens/sheet'
import { actions, effectSteps, newId, openTrip, reckoned } from '../../src/store'

const formats = formatsIn('metric')
const gear = () => openTrip.value!.draft.gear
const home = () => gear().flatMap(({ name, atHome }) => (atHome ? [name] : []))
const need = () => {
  const result = reckoned.value!.reckoned
  if (!result.ok) throw new Error(result.problem.said)
  return result.reckoning.need
}
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const BAG = 'Sleeping bag in its sack'
const plain = (text: string | null | undefined) => (text ?? '').replace(/[\u00a0\u202f]/g, ' ')

beforeEach(() => {
  actions.setSystem('metric')
  gearOrder.value = 'listed'
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
})
afterEach(cleanup)

/** The gear, with what stands at the foot of the page. */
const open = () =>
  render(
    <>
      <GearScreen detail={null} onDetail={() => undefined} />
      <TripUndoBar />
      <Ticker onOpen={() => undefined} />
    </>,
  )

describe('one tap', () => {
  test('leaves a thing at home, says at once what that changes, and takes it along again', () => {
    open()
    const before = need()
    press(`Leave ${BAG} at home`)
    expect(home()).toEqual([BAG])
    const change = {
      litres: need().bodyLitres - before.bodyLitres,
      kg: need().peakLoadFullWaterKg - before.peakLoadFullWaterKg,
    }
    expect(change.litres).toBeLessThan(-5)
    const said = plain(screen.getByText(/^Left /).textContent)
    expect(said).toContain(`Left ${BAG} at home: ${plain(changeText(change, formats))}`)
    expect(said).toMatch(/: −[\d.]+ kg, −[\d.]+ L/)
    expect(screen.getByRole('button', { name: `Leave ${BAG} at home`, pressed: true })).toBeTruthy()
    press('Undo')
    expect(home()).toEqual([])
    expect(need()).toEqual(before)
    expect(plain(screen.getByText(/^Undone: /).textContent)).toMatch(/: \+[\d.]+ kg, \+[\d.]+ L/)
  })

  test('leaves a whole group, and takes it along by one more', () => {
    open()
    const group = gear().find(({ name }) => name === BAG)!.group!
    const names = gear().flatMap(item => (item.group === group ? [item.name] : []))
    expect(names.length).toBeGreaterThan(1)
    press(`Leave ${group} at home`)
    expect(home()).toEqual(names)
    press(`Leave ${group} at home`)
    expect(home()).toEqual([])
    actions.undo()
    expect(home()).toEqual(names)
  })

  test('names a pack whose answer is another then', async () => {
    const [big] = gear()
    actions.edit('fill', draft => ({
      ...draft,
      gear: [{ ...big!, massKg: 60, litres: 200 }, ...draft.gear.slice(1)],
    }))
    const was = reckoned.value!
    open()
    press(`Leave ${big!.name} at home`)
    const answers = (of: typeof was) => (of.reckoned.ok ? of.reckoned.reckoning.packs : [])
    const other = answers(reckoned.value!).find((pack, i) => pack.answer !== answers(was)[i]!.answer)!
    await waitFor(() => expect(screen.getByText(/^Left /).textContent).toContain(other.name))
  })
})

test('a change that is typed is told in the ticker, as one from before the typing', async () => {
  open()
  const { id } = gear().find(({ name }) => name === BAG)!
  act(() => actions.setField(`gear/${id}/massKg`, 1.92, null))
  act(() => actions.setField(`gear/${id}/massKg`, 2.92, null))
  // The figures at once, the answers when typing rests.
  const told = () => plain(screen.getByText(/^Changed: /).textContent)
  expect(told()).toBe('Changed: +2.0 kg')
  await waitFor(() => expect(told()).toBe('Changed: +2.0 kg, 2 other answers'))
})

test('rows tell what each thing costs and are sorted by it, as the engine reckons it', async () => {
  vi.useFakeTimers()
  try {
    open()
    press('What takes the room')
    await act(async () => void (await vi.advanceTimersByTimeAsync(2000)))
  } finally {
    vi.useRealTimers()
  }
  const rows = [...document.querySelectorAll('.row')]
  const costs = [...effectSteps()].map(effect => ({
    name: gear().find(({ id }) => id === effect.id)!.name,
    change: changeOf(effect)!,
  }))
  const most = costs.toSorted((a, b) => a.change.litres - b.change.litres)[0]!
  expect(rows[0]!.querySelector('.name')!.textContent).toBe(most.name)
  expect(rows[0]!.querySelector('.cost')!.textContent).toBe(changeText(most.change, formats))
  expect(rows).toHaveLength(gear().length)
  press('Back to my order')
  expect(document.querySelector('.row .name')!.textContent).toBe(gear()[0]!.name)
})

test('the sheet names it apart, and packs nothing of it', () => {
  const { id } = gear().find(({ name }) => name === BAG)!
  actions.setField(`gear/${id}/atHome`, true, null)
  render(<SheetScreen onClose={() => undefined} />)
  expect(screen.getByText(`Left at home: ${BAG}.`)).toBeTruthy()
  expect(screen.queryByRole('rowheader', { name: new RegExp(BAG) })).toBeNull()
})

test('all trips are judged without it', () => {
  const { draft } = openTrip.value!
  const judged = (gear: typeof draft.gear) => {
    const steps = allTripsSteps([{ name: 'Trip', draft: { ...draft, gear }, typed: {} }], formats)
    let step = steps.next()
    while (!step.done) step = steps.next()
    const { rows, cover, asked, notes } = step.value
    return JSON.parse(JSON.stringify([rows.map(({ cells }) => cells), cover, asked(), notes]))
  }
  const left = gear().map(item => (item.name === BAG ? { ...item, atHome: true } : item))
  const without = gear().filter(({ name }) => name !== BAG)
  expect(judged(left)).toEqual(judged(without))
  expect(judged(left)).not.toEqual(judged(gear()))
  const all = gear().map(item => ({ ...item, atHome: true }))
  expect(judged(all)).toEqual(judged([]))
})

test('a remedy that leaves a thing leaves it on the list', () => {
  const { id, name } = gear().find(item => item.name === BAG)!
  const draft = applyRemedyToDraft(openTrip.value!.draft, { kind: 'leave', leave: [id], proven: true })
  expect(draft.gear.find(item => item.id === id)).toMatchObject({ name, atHome: true })
  expect(draft.gear).toHaveLength(gear().length)
})

describe('what is kept of it', () => {
  const draft = {
    ...emptyDraft(),
    gear: [
      { id: 'chair', name: 'Chair', massKg: 1, litres: 5, atHome: true },
      { id: 'tent', name: 'Tent', massKg: 1, litres: 5 },
    ],
  }
  let ids = 0
  const outside = { newId: () => `new ${++ids}`, now: 1 }

  test('plan files hold it, and those of before that say nothing of it open as they did', () => {
    const document = toPlanDocument({ ...draft, trip: openTrip.value!.draft.trip, carrier: { massKg: 70 } })
    const parsed = parsePlan(JSON.parse(JSON.stringify(document)))
    expect(parsed.ok && parsed.plan.gear.map(({ atHome }) => atHome)).toEqual([true, false])
    const of = (text: string) => settle(fromPlanDocument(JSON.parse(text), newId)).plan
    const before = JSON.stringify(demo)
    expect(before).not.toContain('atHome')
    expect(of(before).gear.some(({ atHome }) => atHome)).toBe(false)
  })

  test('tables have a column of it where something is at home, and read it back', () => {
    expect(gearCsv(draft.gear.slice(1), { system: 'metric' })).not.toContain('Left at home')
    const grid = readGrid(gearCsv(draft.gear, { system: 'metric' }))
    if (!grid.ok) throw new Error('no table')
    const { items: rows } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
    const { gear } = addTable(emptyDraft(), { rows }, outside.newId)
    expect(gear.map(({ name, atHome }) => [name, atHome])).toEqual([
      ['Chair', true],
      ['Tent', undefined],
    ])
    const { things } = shelveTable(emptyShelf(), { rows }, outside)
    expect(things.map(({ item }) => item.name)).toEqual(['Chair', 'Tent'])
    expect(things.some(({ item }) => 'atHome' in item)).toBe(false)
  })

  test('the shelf takes the thing, the trip keeps it at home, and a kit made of the trip leaves it there', () => {
    const made = putOnShelf(
      { draft, shelf: emptyShelf() },
      draft.gear.map(({ id }) => id),
      outside,
    )
    expect(made.shelf.things.map(({ item }) => item)).toEqual([
      { name: 'Chair', massKg: 1, litres: 5 },
      { name: 'Tent', massKg: 1, litres: 5 },
    ])
    expect(made.draft.gear.map(({ atHome }) => atHome)).toEqual([true, undefined])
    const uses = linesFrom(made.draft, made.shelf)
    const packed = packThings(emptyDraft(), made.shelf.things, { ...outside, uses })
    expect(packed.gear.map(({ name, atHome }) => [name, atHome])).toEqual([
      ['Chair', true],
      ['Tent', undefined],
    ])
  })
})
