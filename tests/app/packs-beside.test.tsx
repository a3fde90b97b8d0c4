// Packs side by side: chosen from a pack or on the screen, judged for each trip ticked, drawn to one scale.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { tripName } from '../../src/plan'
import { ANSWERS } from '../../src/report'
import { PacksBesideScreen } from '../../src/screens/packs-beside'
import {
  besideTrips,
  CompareButton,
  chosenSetups,
  takeOut,
  tickTrip,
} from '../../src/screens/packs-beside/chosen'
import { actions, library, openTrip, tripList } from '../../src/store'
import { demoDraft, judged, openDraft, plain } from './compare-packs'
import { openDetails } from './details'

const heads = () => [...document.querySelectorAll('thead th')].map(it => it.textContent)
const cells = (what: string) => {
  const head = [...document.querySelectorAll('tbody th')].find(it => it.textContent === what)
  return [...(head?.closest('tbody')?.querySelectorAll('td') ?? [])].map(it => plain(it.textContent!))
}
const packs = () => openTrip.value!.draft.packs
const addOne = () => {
  const select = screen.getByLabelText<HTMLSelectElement>(/^(Choose two|One more)/)
  const option = [...select.options].find(it => it.value)!
  fireEvent.change(select, { target: { value: option.value } })
}

beforeEach(() => {
  for (const { id } of tripList.value) actions.removeTrip(id)
  for (const key of chosenSetups.value) takeOut(key)
  for (const id of besideTrips.value.keys()) tickTrip(id, false)
  openDraft(demoDraft())
})
afterEach(cleanup)

test('a pack is put beside those chosen in one tap; the answers are those of the trip', () => {
  for (const pack of [packs()[0]!, packs()[2]!]) {
    render(<CompareButton pack={pack} />)
    fireEvent.click(screen.getByRole('button', { name: /^Compare with/ }))
    cleanup()
  }
  expect(library.value.place.screen).toBe('packs-beside')
  render(<PacksBesideScreen />)
  expect(heads()).toEqual([packs()[0]!.name, packs()[2]!.name])
  const { reckoning, packIds } = judged()
  const answers = [0, 2].map(i => {
    const at = packIds.indexOf(packs()[i]!.id)
    const { mark, words } = ANSWERS[reckoning.packs.find(({ pack }) => pack === at)!.answer]
    return `${mark} ${words}Why`
  })
  expect(cells(`For ${tripName(openTrip.value!.draft)}`)).toEqual(answers)
})

test('none chosen, two stand there; up to four are added, and taken out again', () => {
  render(<PacksBesideScreen />)
  expect(heads()).toHaveLength(2)
  addOne()
  addOne()
  expect(heads()).toHaveLength(4)
  expect(screen.queryByLabelText(/^(Choose two|One more)/)).toBeNull()
  fireEvent.click(screen.getByRole('button', { name: `Take out ${heads()[0]}` }))
  expect(heads()).toHaveLength(3)
  expect(screen.getByLabelText('One more')).toBeTruthy()
})

test('every trip ticked has its row of answers', () => {
  actions.createTrip({ ...demoDraft(), name: 'Lake', carrier: { massKg: 60 } })
  render(<PacksBesideScreen />)
  expect(cells('For Lake')).toHaveLength(2)
  const other = tripName(tripList.value[0]!.draft)
  expect(cells(`For ${other}`)).toEqual([])
  openDetails(screen.getByText('For which trips'))
  fireEvent.click(screen.getByLabelText(new RegExp(`^${other.slice(0, 6)}`)))
  expect(cells(`For ${other}`)).toHaveLength(2)
})

test('bodies are drawn to one scale: areas are to each other as the litres', () => {
  render(<PacksBesideScreen />)
  const pictures = [...document.querySelectorAll<SVGElement>('.body-picture')]
  const boxes = new Set(pictures.map(it => it.getAttribute('viewBox')))
  expect([pictures.length, boxes.size]).toEqual([2, 1])
  const litres = heads().map(name => packs().find(pack => name!.startsWith(pack.name!))!.bodyLitres!)
  const [one, other] = pictures.map(it => areaOf(it.querySelector('.body')!.getAttribute('d')!))
  expect(one! / other!).toBeCloseTo(litres[0]! / litres[1]!, 1)
  expect(pictures[0]!.getAttribute('aria-label')).toMatch(/(too small for|left above) what is filled in$/)
})

/** Of a closed outline of straight strokes. */
function areaOf(path: string): number {
  const points = path
    .match(/-?[\d.]+ -?[\d.]+/g)!
    .map(point => point.split(' ').map(Number) as [number, number])
  return Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!
      return sum + x * nextY - nextX * y
    }, 0) / 2,
  )
}

test('what stands there unasked can be taken out', () => {
  render(<PacksBesideScreen />)
  const before = heads()
  fireEvent.click(screen.getAllByRole('button', { name: /^Take out/ })[0]!)
  expect(chosenSetups.value).toHaveLength(before.length - 1)
})
