// Packs while the litres and the mass of a thing are not known: no room is called enough, no stretch surely within reach.

import { cleanup, render, screen } from '@testing-library/preact'
import { afterEach, beforeAll, describe, expect, test } from 'vitest'
import type { Draft } from '../../src/plan'
import { PacksScreen } from '../../src/screens/packs'
import { loadEngine } from '../../src/store'
import { demoDraft, openDetails, openDraft, pageOf, plain, rowWords, withOnePack } from './compare-packs'

const noDetail = { detail: null }

beforeAll(loadEngine)
afterEach(cleanup)

describe('while things have no litres and no mass', () => {
  const gaps = (): Draft => {
    const demo = demoDraft()
    return { ...demo, gear: [...demo.gear, { id: 'tarp', name: 'Tarp' }] }
  }

  test('the picture of room and load calls no room enough', () => {
    openDraft(gaps())
    render(<PacksScreen {...noDetail} />)
    openDetails(screen.getByText('Pictures'))
    const [room] = [...document.querySelectorAll('figure.chart')]
    const words = plain(room!.textContent!) + plain(room!.querySelector('svg')!.outerHTML)
    expect(words).toMatch(/asks for at least \d+\.\d L of main body and at least \d+\.\d kg of load/)
    expect(words).toContain('Hatched: enough for what is counted.')
    expect(words).not.toContain('enough for this trip')
    // Nothing is shaded that is not hatched.
    const [all, maybe] = ['.region', '.region-maybe'].map(it => room!.querySelector(it)!.getAttribute('d'))
    expect(maybe).toBe(all)
  })

  test('a stretch is within reach only so far', async () => {
    openDraft({ ...gaps(), packs: withOnePack(60, 40).packs })
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText('How far it reaches'))
    expect(await screen.findByText('At most: items without litres or a mass are not counted.')).toBeTruthy()
    expect(plain(document.querySelector('figure.chart')!.textContent!)).toContain('within reach so far')
  })
})

test('without gear a pack is not set above another, rests on nothing, and only what it lacks is named', () => {
  const [known] = withOnePack(60, 12).packs
  const open = { id: 'q', name: 'Open', bodyLitres: 30, setups: [{ id: 'v', frame: 'framed' as const }] }
  openDraft({ ...demoDraft(), gear: [], packs: [known!, open] })
  const { unmount } = render(<PacksScreen {...noDetail} />)
  expect(screen.getByRole('heading', { name: 'Can’t tell yet: no gear' })).toBeTruthy()
  expect(rowWords()).toEqual(['can’t tell: no gear yet', 'can’t tell: no mass'])
  unmount()
  const pages = [0, 1].map(index => {
    const page = render(<PacksScreen {...pageOf(index)} />)
    const words = plain(document.body.textContent!)
    page.unmount()
    return words
  })
  expect(pages[0]).toMatch(/Full, /)
  expect(pages[1]).toContain('Its mass is missing.')
  expect(pages.join()).not.toMatch(/No other beats|Rests on|Load judged|Room not judged/)
})
