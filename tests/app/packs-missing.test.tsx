// Packs while the litres and the mass of a thing are not known: no room is called enough, no stretch surely within reach.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeAll, describe, expect, test } from 'vitest'
import type { Draft } from '../../src/plan'
import { formatsIn } from '../../src/report'
import { cornerOf } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { loadEngine } from '../../src/store'
import { demoDraft, judged, openDraft, pageOf, plain, rowWords, withOnePack } from './compare-packs'
import { openDetails } from './details'

const noDetail = { detail: null }

beforeAll(loadEngine)
afterEach(cleanup)

describe('while things have no litres and no mass', () => {
  const gaps = (): Draft => {
    const demo = demoDraft()
    return { ...demo, gear: [...demo.gear, { id: 'tarp', name: 'Tarp' }] }
  }

  test('the chart calls no room enough: what is asked for is the least', () => {
    openDraft(gaps())
    render(<PacksScreen {...noDetail} />)
    fireEvent.click(screen.getByRole('button', { name: 'Chart' }))
    const { plan, reckoning } = judged()
    const words = plain(screen.getByRole('img', { name: /^Of / }).getAttribute('aria-label')!)
    expect(words).toMatch(/This trip asks for at least \d+\.\d L, at least \d+\.\d kg\.$/)
    expect(cornerOf(plan, reckoning, formatsIn('metric'))!.safeLitres).toBe(Number.POSITIVE_INFINITY)
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
