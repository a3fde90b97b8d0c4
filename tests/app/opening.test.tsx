// Places that open: where the focus goes, the ways back from the empty app, and the words of the settings.

import { signal } from '@preact/signals'
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, describe, expect, test, vi } from 'vitest'
import demo from '../../data/demo-plan.json'
import { incoming, nextIncoming } from '../../src/components/files'
import { keepScroll, UndoBar, useHeadingFocus, useScrollBack } from '../../src/components/frame'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { Carrier } from '../../src/screens/trip/Habits'
import { EmptyApp } from '../../src/screens/welcome'
import { actions, library, newId, openTrip } from '../../src/store'

afterEach(cleanup)

const place = signal('trip')
const aFrame = () => act(() => new Promise<void>(done => requestAnimationFrame(() => done())))

function Places() {
  useHeadingFocus(place.value, place.value)
  useScrollBack(place.value === 'trip')
  return (
    <>
      <main>
        {place.value === 'trip' ? (
          <button
            type="button"
            onClick={() => {
              keepScroll()
              place.value = 'more'
            }}
          >
            More
          </button>
        ) : (
          <h1>Trips and settings</h1>
        )}
      </main>
      <button
        type="button"
        onClick={() => {
          place.value = 'more'
        }}
      >
        Tab
      </button>
    </>
  )
}

describe('a place that opens', () => {
  test('takes the focus to its heading when what had it is gone', async () => {
    place.value = 'trip'
    render(<Places />)
    screen.getByText('More').focus()
    fireEvent.click(screen.getByText('More'))
    await aFrame()
    expect(document.activeElement).toBe(screen.getByRole('heading'))
  })

  test('leaves the focus on a tab that is still there', async () => {
    place.value = 'trip'
    render(<Places />)
    screen.getByText('Tab').focus()
    fireEvent.click(screen.getByText('Tab'))
    await aFrame()
    expect(document.activeElement).toBe(screen.getByText('Tab'))
  })

  test('is found where it was left to look at something', () => {
    place.value = 'trip'
    const scrolled = vi.spyOn(globalThis, 'scrollTo').mockImplementation(() => undefined)
    vi.stubGlobal('scrollY', 640)
    actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
    render(<Places />)
    fireEvent.click(screen.getByText('More'))
    act(() => {
      place.value = 'trip'
    })
    expect(scrolled.mock.calls).toEqual([[0, 640]])
    vi.restoreAllMocks()
    vi.unstubAllGlobals()
  })
})

describe('the empty app', () => {
  test('takes in a saved file, and opens what was kept before', () => {
    render(<EmptyApp />)
    const file = new File(['{}'], 'backup.json')
    fireEvent.change(screen.getByLabelText('Open a saved file'), { target: { files: [file] } })
    expect(incoming.value).toEqual([file])
    nextIncoming()
    fireEvent.click(screen.getByRole('button', { name: /^More/ }))
    expect(library.value.place.screen).toBe('more')
  })

  test.each([
    ['Plan a trip', 'trip', 0],
    ['Is my pack enough?', 'packs', 0],
    ['In a shop', 'shop', 0],
    ['Food and water between resupplies', 'trip', 3],
  ])('%s is one tap', (label, place, stops) => {
    render(<EmptyApp />)
    fireEvent.click(screen.getByRole('button', { name: label }))
    expect(library.value.place.screen).toBe(place)
    expect(openTrip.value?.draft.trip.stops).toHaveLength(stops)
    const shop = openTrip.value?.draft.trip.stops.find(({ resupply }) => resupply)
    expect(library.value.place.detail).toBe(shop ? `trip/stops/${shop.id}` : null)
  })
})

test('a deleted trip without a name is told of as such', () => {
  const id = actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: [], packs: [] })
  actions.removeTrip(id)
  render(<UndoBar />)
  expect(screen.getByText('Deleted trip without a name')).toBeTruthy()
})

test('the resting energy reads the same as its reason', async () => {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
  actions.setField('carrier/massKg', 71, null)
  actions.setField('carrier/heightCm', 176, null)
  render(<Carrier />)
  const button = screen.getByText(/^Resting .* a day$/)
  const [, figure = ''] = /([\d,]+)\skcal/.exec(button.textContent ?? '') ?? []
  fireEvent.click(button)
  await screen.findByText(/inside 19 to 78 years/)
  const said = document.querySelector('.why-panel')?.textContent?.match(/[\d,]+(?=\skcal)/g) ?? []
  expect([...new Set(said)]).toEqual([figure])
})
