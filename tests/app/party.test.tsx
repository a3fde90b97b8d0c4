// Several people: added with a tap, removed with nothing lost, things given to them, and figures of the one chosen.

import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { Ticker } from '../../src/components/frame'
import { withShared } from '../../src/plan'
import { Owner, PartyFigures, People, SplitScreen, Whose } from '../../src/screens/party'
import { TripScreen } from '../../src/screens/trip'
import { actions, openTrip, person, reckoned } from '../../src/store'
import { demoDraft, openDraft, plain } from './compare-packs'
import { openDetails } from './details'

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const draft = () => openTrip.value!.draft
const idOf = (name: string) => draft().gear.find(item => item.name === name)!.id
const type = (label: RegExp, nth: number, text: string) =>
  fireEvent.input(screen.getAllByRole('textbox', { name: label })[nth]!, { target: { value: text } })
const TARP = 'Ridge tarp with inner'

beforeEach(() => openDraft(demoDraft()))
afterEach(cleanup)

/** Ada, Bo, and Cy who is ten. */
function family() {
  const view = render(<TripScreen detail={null} onDetail={() => undefined} />)
  press('Walk with somebody')
  view.unmount()
  const people = render(<People />)
  press('Add another')
  for (const [nth, [name, mass, age]] of [
    ['Ada', '60', '38'],
    ['Bo', '80', '40'],
    ['Cy', '34', '10'],
  ].entries()) {
    type(/^Name/, nth, name!)
    type(/^Body mass/, nth, mass!)
    type(/^Age/, nth, age!)
  }
  people.unmount()
}

test('a lone hiker sees one line of it, and one tap adds a person and asks for nothing more', async () => {
  const alone = render(<TripScreen detail={null} onDetail={() => undefined} />)
  expect(alone.container.textContent).not.toMatch(/person|people|carries what/i)
  expect(person.value).toBeNull()
  press('Walk with somebody')
  await waitFor(() => expect(screen.getByRole('heading', { name: 'Who walks' })).toBeTruthy())
  expect(draft().people).toHaveLength(2)
  press('Add another')
  expect(draft().people).toHaveLength(3)
  expect(screen.getAllByRole('group', { name: /^Person \d$/ })).toHaveLength(3)
  expect(reckoned.value!.leftOut.map(({ what }) => what)).toEqual(['Person 2', 'Person 3'])
})

test('removing a person keeps their things, is told, and is undone in one step', () => {
  family()
  const cy = draft().people![2]!.id
  actions.setField(`gear/${idOf(TARP)}/owner`, cy, null)
  const before = draft()
  render(<People />)
  press('Remove Cy')
  expect(draft().gear).toHaveLength(before.gear.length)
  expect(draft().gear.find(({ name }) => name === TARP)).not.toHaveProperty('owner')
  actions.undo()
  expect(draft()).toEqual(before)
})

test('an item says whose it is and who carries it', () => {
  family()
  const bo = draft().people![1]!.id
  const item = () => draft().gear.find(({ name }) => name === TARP)!
  render(<Owner item={item()} />)
  fireEvent.change(screen.getByLabelText('Whose it is'), { target: { value: bo } })
  expect(item().owner).toBe(bo)
  expect(screen.getByLabelText('Who carries it')).toBeTruthy()
  actions.setField(`gear/${item().id}/carriedBy`, bo, null)
  expect(reckoned.value!.party!.carriers.get(item().id)).toBe(bo)
  expect(reckoned.value!.plan.gear.some(({ name }) => name === TARP)).toBe(false)
})

describe('who carries what', () => {
  test('before it is shared out is with the first, and says so', () => {
    family()
    render(<SplitScreen />)
    expect(screen.getByText(/^Nothing is shared out yet/)).toBeTruthy()
    expect(screen.getByText(/^No bottle yet for Bo and Cy/)).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Share out' })).toBeTruthy()
  })

  test('cannot be told by limits while a body mass is missing, and says whose', () => {
    family()
    const cy = draft().people![2]!.id
    actions.setField(`people/${cy}/massKg`, undefined, null)
    render(<SplitScreen />)
    expect(screen.getByText(/^Can’t tell yet how much Cy may carry: give the body mass/)).toBeTruthy()
    expect(screen.queryByText(/Cy (stays within|carries too much)/)).toBeNull()
    expect(plain(document.body.textContent!)).toMatch(/without a pack; can’t tell if that is too much/)
  })

  test('tells a pin at once, with the change of each load', () => {
    family()
    const [ada, bo] = draft().people!.map(({ id }) => id)
    actions.edit('Share out', made =>
      withShared(made, Object.fromEntries(made.gear.map(({ id }) => [id, ada!]))),
    )
    render(<SplitScreen />)
    fireEvent.change(screen.getByLabelText(`Who carries ${TARP}`), { target: { value: bo } })
    const heading = screen.getByRole('heading', { name: /^Bo/ })
    const section = within(heading.closest('section')!)
    expect(section.getByText(TARP)).toBeTruthy()
    expect(plain(section.getByRole('status').textContent!)).toMatch(/\(\+\d[.\d]* (kg|g)\)/)
    expect(screen.getByRole('button', { name: 'Share out again' })).toBeTruthy()
    actions.undo()
    expect(draft().gear.find(({ name }) => name === TARP)).not.toHaveProperty('carriedBy')
  })

  test('gives many things at once to one, or one to each', () => {
    family()
    render(<SplitScreen />)
    openDetails(screen.getByText(/^Whose is what/))
    fireEvent.click(screen.getByRole('checkbox', { name: new RegExp(`^${TARP}`) }))
    fireEvent.click(screen.getByRole('checkbox', { name: /^Foam mat/ }))
    press('Bo’s')
    const bo = draft().people![1]!.id
    expect(
      draft()
        .gear.filter(({ owner }) => owner === bo)
        .map(({ name }) => name),
    ).toEqual([TARP, 'Foam mat'])
    fireEvent.click(screen.getByRole('checkbox', { name: /^Bottle/ }))
    press('One for each')
    expect(draft().gear.filter(({ name }) => name === 'Bottle')).toHaveLength(3)
  })
})

test('what is shown everywhere is of the one who is chosen', () => {
  family()
  const [ada, bo, cy] = draft().people!.map(({ id }) => id)
  actions.edit('Share out', made =>
    withShared(made, Object.fromEntries(made.gear.map(({ id }) => [id, bo!]))),
  )
  expect(person.value).toBe(ada)
  render(
    <>
      <Whose />
      <Ticker onOpen={() => undefined} />
      <PartyFigures />
    </>,
  )
  const heaviest = () => plain(document.querySelector('.ticker')!.textContent!)
  const ofAda = heaviest()
  fireEvent.click(screen.getByRole('radio', { name: 'Bo' }))
  expect(person.value).toBe(bo)
  expect(heaviest()).not.toBe(ofAda)
  press('Cy')
  expect(person.value).toBe(cy)
  expect(screen.getAllByRole('row')).toHaveLength(4)
  // The pack that is taken is theirs.
  const pack = draft().packs[0]!
  actions.setField(`people/${cy}/takes`, { pack: pack.id, setup: pack.setups[0]!.id }, null)
  expect(reckoned.value!.taken).not.toBeNull()
  expect(reckoned.value!.party!.reckoning!.people[2]!.pack!.name).toBe(pack.name)
  actions.setPerson(ada!)
  expect(reckoned.value!.taken).toBeNull()
})
