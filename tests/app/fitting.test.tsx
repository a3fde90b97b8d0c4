// The fit of rigid things and the placing of the load on the Packs screen: what is said at once, what on opening, and
// where it leads.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeAll, expect, test } from 'vitest'
import type { DraftPack } from '../../src/plan'
import { PacksScreen } from '../../src/screens/packs'
import { library, loadEngine } from '../../src/store'
import { demoDraft, openDraft, pageOf, plain } from './compare-packs'
import { openDetails, openTables } from './details'

beforeAll(async () => {
  await loadEngine()
  // Fetched on demand in the app; here beforehand, so that no wait depends on how busy the machine is.
  await import('../../src/screens/packs/Placing')
})
afterEach(cleanup)

const inner = { innerHeightCm: 61, innerWidthCm: 31, innerDepthCm: 24 }
const roomy = (more: Partial<DraftPack>): DraftPack => ({
  id: 'p',
  name: 'The one',
  bodyLitres: 60,
  outsideLitres: 8,
  setups: [{ id: 's', name: 'as it is', massKg: 1, ratedKg: 22, frame: 'framed' }],
  ...more,
})
function show(more: Partial<DraftPack>) {
  openDraft({ ...demoDraft(), packs: [roomy(more)] })
  return render(<PacksScreen {...pageOf()} />)
}
const shownText = () => plain(document.body.textContent ?? '')
async function openReasons() {
  fireEvent.click(screen.getByText('All reasons and figures'))
  return within(await screen.findByRole('region', { name: 'Rigid items in it' }))
}

test('nothing is said at once while every rigid thing stands; each is in the list with its numbers', async () => {
  show(inner)
  expect(document.querySelector('.fit-line')).toBeNull()
  const things = await openReasons()
  const said = things.getAllByRole('listitem').map(one => plain(one.textContent ?? ''))
  expect(said).toHaveLength(4)
  expect(said[1]).toMatch(/^Hard food box: fits upright\. 21 cm across where there is room for 23 cm/)
})

test('one line says at once that a thing does not stand', () => {
  show({ ...inner, innerDepthCm: 19, bodyLitres: 30 })
  const line = plain(document.querySelector('.fit-line')?.textContent ?? '')
  expect(line).toMatch(
    /^Something is too wide: Hard food box, 21 cm across, where the main body gives 19 cm\./,
  )
})

test('a pack without its inner sizes is not judged, and leads to the field', async () => {
  show({ innerHeightCm: 61 })
  const things = await openReasons()
  expect(
    things.getByText(/Not judged: the pack’s inner width and depth are not known\. 4 items have a size/),
  ).toBeTruthy()
  fireEvent.click(things.getByText('Give the pack’s inner size'))
  expect(library.value.place).toMatchObject({ screen: 'packs', detail: 'packs/p' })
})

test('the placing is worked out on opening: both moments, the same as a table, the caution', async () => {
  show(inner)
  expect(shownText()).not.toContain('N·m')
  openDetails(screen.getByText('Where heavy items go'))
  expect(await screen.findByText(/standing upright/)).toBeTruthy()
  const picture = screen.getByRole('img', { name: /from the side\. At the heaviest/ })
  expect(within(picture).getAllByText(/N·m/)).toHaveLength(2)
  openTables()
  expect(screen.getByRole('rowheader', { name: 'Heavy items close' })).toBeTruthy()
  expect(screen.getByText(/High or low: studies disagree/)).toBeTruthy()
  expect(screen.getByText('CAUTION')).toBeTruthy()
})
