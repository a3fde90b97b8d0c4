// The screens' wiring on the demo trip: what the engine finds is what stands there, and edits go through.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import type { Reckoning } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { GearScreen } from '../../src/screens/gear'
import { NeedScreen } from '../../src/screens/need'
import { PacksScreen } from '../../src/screens/packs'
import { TripScreen } from '../../src/screens/trip'
import { actions, library, newId, openTrip, reckoned } from '../../src/store'

const noDetail = { detail: null, onDetail: () => undefined }

beforeEach(() => {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
})
afterEach(cleanup)

describe('packs', () => {
  test('show one answer for each set-up, and say when a pack cannot be judged yet', () => {
    const open = reckoned.value
    if (!open?.reckoned.ok) throw new Error('the demo does not settle')
    const { packs } = open.reckoned.reckoning
    openTrip.value!.draft.packs.forEach(({ id }, index) => {
      const { unmount } = render(<PacksScreen detail={`packs/${id}`} />)
      const own = packs.filter(({ pack }) => pack === index)
      const answers = document.querySelectorAll('.verdict-answer')
      expect(answers).toHaveLength(own.length)
      expect(screen.queryAllByText(/Does not$/)).toHaveLength(own.filter(pack => !pack.suffices).length)
      unmount()
    })
    const pack = openTrip.value!.draft.packs[0]!
    actions.setField(`packs/${pack.id}/bodyLitres`, undefined, null)
    render(<PacksScreen detail={`packs/${pack.id}`} />)
    expect(screen.getByText(/Room not judged/)).toBeTruthy()
  })
})

describe('with a thing whose litres nobody has said', () => {
  const withoutLitres = () => {
    const item = openTrip.value!.draft.gear.find(({ litres }) => litres !== undefined && litres > 0)!
    actions.setField(`gear/${item.id}/litres`, undefined, null)
    return item
  }
  const text = () => document.body.textContent ?? ''

  test('the need is a lower bound without range or chance, and leads to that field first', () => {
    const item = withoutLitres()
    render(<NeedScreen />)
    expect(text()).toMatch(/Main bodyAt least \d+\sL1 item without litres/)
    expect(document.querySelector('.answer')?.textContent).not.toMatch(/likely|enough/)
    fireEvent.click(screen.getByText('litres?'))
    expect(library.value.place).toMatchObject({ screen: 'gear', detail: `gear/${item.id}` })
  })

  test('the usual litres of its kind are one tap away, and follow its mass from then on', () => {
    const item = openTrip.value!.draft.gear.find(({ litres }) => litres !== undefined && litres > 0)!
    actions.setField(`gear/${item.id}/name`, 'Quilt', null)
    actions.setField(`gear/${item.id}/massKg`, 0.5, null)
    actions.setField(`gear/${item.id}/litres`, undefined, 'two')
    render(<NeedScreen />)
    fireEvent.click(screen.getByText(/usual for: /))
    const { draft, typed } = openTrip.value!
    const now = draft.gear.find(({ id }) => id === item.id)!
    expect(now.litresPerKg!.typical * 0.5).toBeCloseTo(now.litresRange!.typical, 9)
    expect(typed).toEqual({})
  })

  test('no pack simply does, and no chance is told', () => {
    for (let i = 0; i < 2; i++) actions.setField(`gear/${withoutLitres().id}/name`, 'Qwxz', null)
    const { unmount } = render(<PacksScreen detail={null} />)
    expect(text()).toMatch(/can’t tell: 2 items without litres/)
    expect(document.querySelectorAll('[data-answer="does"]')).toHaveLength(0)
    unmount()
    for (const { id } of openTrip.value!.draft.packs) {
      const page = render(<PacksScreen detail={`packs/${id}`} />)
      expect(screen.queryByText(/^Does$/)).toBeNull()
      expect(text()).not.toMatch(/fits in (about|more|fewer)/)
      page.unmount()
    }
  })
})

describe('gear', () => {
  test('shows every item under its group with mass and litres', () => {
    render(<GearScreen {...noDetail} />)
    // The food and its group are both called so.
    for (const item of demo.gear)
      expect(screen.getAllByText(text => text.endsWith(item.name)).length).toBeGreaterThan(0)
    const { baseKg } = (reckoned.value!.reckoned as { reckoning: Reckoning }).reckoning.need
    const base = formatsIn('metric').kg(baseKg).replace('\u00a0', ' ')
    expect(screen.getByText(text => text.includes(`Base weight ${base}`))).toBeTruthy()
  })

  test('an open item can be deleted, and undo brings it back', () => {
    render(<GearScreen detail="gear/camera" onDetail={() => undefined} />)
    fireEvent.click(screen.getByLabelText('Delete Field glasses'))
    expect(openTrip.value?.draft.gear.some(item => item.id === 'camera')).toBe(false)
    actions.undo()
    expect(openTrip.value?.draft.gear.some(item => item.id === 'camera')).toBe(true)
  })
})

describe('trip', () => {
  test('offers stops from a few numbers while there are none', () => {
    actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: [], packs: [] })
    render(<TripScreen {...noDetail} />)
    fireEvent.input(screen.getByLabelText('Days'), { target: { value: '5' } })
    fireEvent.click(screen.getByText('Make the stops'))
    expect(openTrip.value?.draft.trip.stops).toHaveLength(6)
  })

  test('shows the computed walking time as what counts while none is typed', () => {
    const stop = openTrip.value!.draft.trip.stops[1]!
    render(<TripScreen detail={`trip/stops/${stop.id}`} onDetail={() => undefined} />)
    const editor = document.getElementById(`edit-${stop.id}`)!
    expect(within(editor).getByText(/DIN 33466/)).toBeTruthy()
  })
})
