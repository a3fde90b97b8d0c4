// All my trips: which are compared, what does for which, and the fewest packs for all.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { inOneGo } from '../../src/files/portions'
import { formatsIn } from '../../src/report'
import { allTripsSteps } from '../../src/report/compare-packs'
import { AllTripsScreen } from '../../src/screens/trips'
import { chosen } from '../../src/screens/trips/which'
import { actions, trips } from '../../src/store'
import { demoDraft, openDraft, withOnePack } from './compare-packs'

const allTripsOf = (...given: Parameters<typeof allTripsSteps>) => inOneGo(allTripsSteps(...given))
const formats = formatsIn('metric')
const asked = (name: string, draft = demoDraft()) => ({ name, draft, typed: {} })
/** A day out: little gear, and a pack that no other trip has. */
const dayOut = () => ({
  ...demoDraft(),
  gear: demoDraft().gear.slice(0, 2),
  packs: [{ ...withOnePack(42, 14).packs[0]!, name: 'Day bag' }],
})

beforeEach(() => {
  for (const id of trips.value.keys()) actions.removeTrip(id)
  chosen.value = new Map()
})
afterEach(cleanup)

describe('the trips compared', () => {
  test('are all but the invented demo', () => {
    openDraft({ ...demoDraft(), name: 'Invented' }, { isDemo: true })
    openDraft({ ...demoDraft(), name: 'Mine' })
    render(<AllTripsScreen />)
    const box = (name: RegExp) => screen.getByRole('checkbox', { name }) as HTMLInputElement
    expect(box(/Invented/).checked).toBe(false)
    expect(box(/Mine/).checked).toBe(true)
    const table = within(screen.getByRole('table'))
    expect(table.getAllByRole('columnheader').map(cell => cell.textContent)).toEqual(['Pack', 'Mine'])
    fireEvent.click(box(/Invented/))
    expect(screen.getAllByRole('columnheader').map(cell => cell.textContent)).toEqual([
      'Pack',
      'Invented',
      'Mine',
    ])
  })

  test('are the demo as long as there is nothing else', () => {
    openDraft({ ...demoDraft(), name: 'Invented' }, { isDemo: true })
    render(<AllTripsScreen />)
    expect((screen.getByRole('checkbox', { name: /Invented/ }) as HTMLInputElement).checked).toBe(true)
  })

  test('are the first twenty of very many, and those that are chosen', () => {
    for (let i = 1; i <= 120; i++) openDraft({ ...withOnePack(42, 14), name: `Trip ${i}` })
    render(<AllTripsScreen />)
    expect(screen.getAllByRole('columnheader')).toHaveLength(21)
    expect(screen.getAllByRole('checkbox')).toHaveLength(50)
    screen.getByText('The first 20 are ticked to begin with.')
    screen.getByText(/50 of 120 trips are shown/)
    fireEvent.click(screen.getAllByRole('checkbox')[40]!)
    expect(screen.getAllByRole('columnheader')).toHaveLength(22)
  })

  test('are worked out one after the other where there is much to reckon', async () => {
    const gear = Array.from({ length: 1600 }, (_, i) => ({
      id: `i${i}`,
      name: `Item ${i}`,
      massKg: 0.01,
      litres: 0.01,
    }))
    for (const name of ['Long', 'Longer']) openDraft({ ...withOnePack(42, 14), gear, name })
    render(<AllTripsScreen />)
    screen.getByText('Working it out…')
    expect(screen.queryByRole('table')).toBeNull()
    await screen.findByRole('table')
    expect(screen.getAllByRole('columnheader').map(cell => cell.textContent)).toEqual([
      'Pack',
      'Long',
      'Longer',
    ])
    expect(screen.queryByText('Working it out…')).toBeNull()
  })

  test('may be none, which says what to do', () => {
    openDraft({ ...demoDraft(), name: 'Mine' })
    render(<AllTripsScreen />)
    fireEvent.click(screen.getByRole('checkbox', { name: /Mine/ }))
    expect(screen.getByText(/^Choose a trip/)).toBeTruthy()
  })
})

describe('a thousand packs', () => {
  test('are told in portions', () => {
    const [pack] = withOnePack(42, 14).packs
    const packs = Array.from({ length: 1000 }, (_, i) => ({ ...pack!, id: `p${i}`, name: `Pack ${i}` }))
    openDraft({ ...demoDraft(), packs })
    render(<AllTripsScreen />)
    expect(document.querySelectorAll('.trip-table > tbody')).toHaveLength(50)
    fireEvent.click(screen.getByRole('button', { name: 'Show 50 more rows' }))
    expect(document.querySelectorAll('.trip-table > tbody')).toHaveLength(100)
  })
})

describe('the shelf', () => {
  test('holds every pack of every trip once, judged for each', () => {
    const all = allTripsOf([asked('Long'), asked('Day', dayOut())], formats)
    expect(all.rows.map(row => row.pack)).toEqual([
      'Small frameless',
      'Two-way with removable frame',
      'Two-way with removable frame',
      'Big old carrier',
      'Day bag',
    ])
    for (const row of all.rows) expect(row.cells).toHaveLength(2)
    expect(all.rows.at(-1)!.cells[0]!.answer).toBe('Does not')
  })

  test('says when a pack of one name has two sets of figures, and which count', () => {
    const other = demoDraft()
    const packs = other.packs.map(pack => ({ ...pack, bodyLitres: 99 }))
    const { notes, rows } = allTripsOf([asked('First'), asked('Second', { ...other, packs })], formats)
    expect(notes).toContain(
      'Big old carrier has other figures in Second: those of First are used for all trips.',
    )
    expect(rows).toHaveLength(4)
  })

  test('says which pack could not be judged', () => {
    const start = withOnePack(40, 10)
    const packs = [{ id: 'p', name: 'Half known', setups: start.packs[0]!.setups }]
    const { notes } = allTripsOf([asked('Mine', { ...start, packs })], formats)
    expect(notes.some(note => note.includes('Half known'))).toBe(true)
  })
})

describe('the fewest packs', () => {
  test('are one where one does for all, and its trips are named', () => {
    const { cover } = allTripsOf([asked('A'), asked('B')], formats)
    expect(cover.ok && cover.packs.map(pack => [pack.name, pack.trips.map(does => does.trip)])).toEqual([
      ['Big old carrier', [0, 1]],
    ])
  })

  test('leave a trip uncovered for which none does, in words', () => {
    openDraft({ ...withOnePack(20, 8), name: 'Too much' })
    openDraft({ ...dayOut(), name: 'Day' })
    render(<AllTripsScreen />)
    expect(screen.getByText(/^No pack is suitable for/).textContent).toContain('Too much')
  })

  test('a single pack for all is asked for the most that any trip asks', () => {
    const one = allTripsOf([asked('Long')], formats).asked()!
    const both = allTripsOf([asked('Day', dayOut()), asked('Long')], formats).asked()!
    expect(both.wanted.bodyLitresSafe).toBe(one.wanted.bodyLitresSafe)
    expect(both.likelyLitres).toBe(one.likelyLitres)
  })

  test('takes a frame as soon as the load with the pack is more than is carried without one', () => {
    const { asked: ofDay } = allTripsOf([asked('Day', dayOut())], formats)
    const { wanted } = ofDay(0)!
    const spareKg = 9.07 - wanted.contentsKg
    expect(wanted.frame).toBe(false)
    expect(ofDay(spareKg - 0.01)!.wanted).toMatchObject({ frame: false })
    expect(ofDay(spareKg + 0.01)!.wanted).toMatchObject({ frame: true, contentsKg: wanted.contentsKg })
    expect(ofDay(spareKg + 0.01)!.wanted.ratedKg).toBeCloseTo(9.08, 9)
  })
})
