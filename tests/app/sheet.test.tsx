// The printed sheet on the demo trip: every figure that matters is on it, and every item once, where it rides.

import { act, cleanup, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { emptyDraft, fromPlanDocument, type Item, parsePlan } from '../../src/plan'
import { formatsIn } from '../../src/report'
import { packedByPlace } from '../../src/report/packing-day'
import { SheetScreen } from '../../src/screens/sheet'
import { actions, newId, reckoned } from '../../src/store'

function openPlan(value: unknown) {
  const parsed = parsePlan(value)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  actions.createTrip(fromPlanDocument(parsed.document, newId))
}

function open() {
  const result = reckoned.value
  if (!result?.reckoned.ok) throw new Error('the trip does not reckon')
  return { plan: result.plan, reckoning: result.reckoned.reckoning }
}

const sheet = () => render(<SheetScreen onClose={() => undefined} />).getByRole('article')

beforeEach(() => openPlan(demo))
afterEach(cleanup)

describe('the sheet', () => {
  test('states the need with its likely range, the units and the heaviest load', () => {
    const { need } = open().reckoning
    const formats = formatsIn('metric')
    const text = sheet().textContent ?? ''
    expect(text).toContain(demo.name)
    expect(text).toContain(`Main body${formats.litresUp(need.bodyLitres)}`)
    expect(text).toContain(`to ${formats.litresUp(need.bodyLitresSafe)}; fullest`)
    expect(text).toContain(`Heaviest load${formats.kg(need.peakLoadFullWaterKg)}`)
    expect(text).toMatch(/Masses in kilograms or grams/)
  })

  test('has a row for every day and for every stretch that wants water', () => {
    const { reckoning } = open()
    sheet()
    const rows = (name: string) => within(screen.getByRole('table', { name })).getAllByRole('row').length - 1
    expect(rows('Days')).toBe(reckoning.days.length)
    expect(rows('Water to leave with')).toBe(reckoning.carries.filter(c => c.needLitres > 0).length)
  })

  test('answers for each set-up of each pack', () => {
    const { reckoning } = open()
    const answers = sheet().textContent?.match(/: (does not|does|can’t tell yet)/g) ?? []
    expect(answers).toHaveLength(reckoning.packs.length)
    expect(answers.filter(answer => answer.includes('not'))).toHaveLength(
      reckoning.packs.filter(pack => !pack.suffices).length,
    )
  })

  test('lists every item of the demo once, the daily one by the day', () => {
    const list = sheet().querySelector('.sheet-packing')!
    const text = list.textContent ?? ''
    for (const { name } of demo.gear) expect(text, name).toContain(name)
    expect(list.querySelectorAll('.name')).toHaveLength(demo.gear.length)
    expect(text).toMatch(/a day/)
  })

  test('prints every warning in full, and the line that holds for all', () => {
    const text = sheet().textContent ?? ''
    expect(text).toMatch(
      /WARNING Your bottles hold .* of .* of water needed from .*and too little on 1 more stretch\. .*From .* to .*: .* of .*\./,
    )
    expect(text).toMatch(/not medical advice/)
  })

  test('does not hide that stand-ins were used', () => {
    actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: [{ id: 'a', name: 'Rope' }], packs: [] })
    expect(sheet().textContent).toMatch(/Not counted yet: .*Rope/)
  })
})

describe('the packing list', () => {
  const gearOf = (gear: unknown[]): Item[] => {
    openPlan({ ...demo, gear })
    return open().plan.gear
  }
  const item = (id: string, more: object) => ({ id, name: id, massKg: 1, litres: 1, ...more })

  test('goes by place, contents under their container wherever it rides, and leaves out what is not taken', () => {
    const gear = gearOf([
      item('cup', { inside: 'pot' }),
      item('hat', { stow: 'worn' }),
      item('pot', { build: 'rigid', holdsLitres: 2, stow: 'strapped-on' }),
      item('axe', { stow: 'strapped-on' }),
      item('none', { count: 0 }),
    ])
    expect(
      packedByPlace(gear).map(({ title, rows }) => [title, rows.map(r => [r.item.id, r.within])]),
    ).toEqual([
      [
        'Strapped on',
        [
          ['pot', false],
          ['cup', true],
          ['axe', false],
        ],
      ],
      ['Worn and in hand', [['hat', false]]],
    ])
  })

  test('keeps what would ride in a container that stays at home', () => {
    const gear = gearOf([
      item('pot', { build: 'rigid', holdsLitres: 2, count: 0 }),
      item('cup', { inside: 'pot' }),
    ])
    expect(packedByPlace(gear)).toMatchObject([{ title: 'Main body', rows: [{ item: { id: 'cup' } }] }])
  })
})

test('the sheet tells of the pack that is taken alone, and of all where none is', () => {
  const setups = [{ id: 's', massKg: 1, frame: 'framed' as const, ratedKg: 15 }]
  const packs = ['One', 'Two'].map((name, i) => ({ id: `p${i}`, name, bodyLitres: 50, setups }))
  act(() => {
    actions.editShelf('Empty', it => ({ ...it, packs: [] }))
    actions.createTrip({ ...emptyDraft(), gear: [{ id: 'a', name: 'Rope', massKg: 2, litres: 3 }], packs })
  })
  render(<SheetScreen onClose={() => undefined} />)
  const told = () => [...document.querySelectorAll('.sheet-packs strong bdi')].map(node => node.textContent)
  expect(told()).toEqual(['One', 'Two'])
  act(() => actions.edit('Take', draft => ({ ...draft, takes: { pack: 'p1', setup: 's' } })))
  expect(told()).toEqual(['Two'])
})
