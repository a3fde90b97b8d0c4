// The page of a pack and the menu of its row: how one gets there and back, and what is done with the pack.

import { act, cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { PacksScreen } from '../../src/screens/packs'
import { AS_LISTED, view } from '../../src/screens/packs/view'
import { actions, lastLabel, library, loadEngine, openTrip } from '../../src/store'
import { demoDraft, draft, openDraft, pageOf } from './compare-packs'

/** The packs as the app shows them: at the place where one is. */
const Packs = () => <PacksScreen detail={library.value.place.detail} />

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const names = () => [...document.querySelectorAll('.row .name')].map(name => name.textContent)
const focused = () => document.activeElement?.textContent

beforeAll(loadEngine)
beforeEach(() => {
  view.value = AS_LISTED
  openDraft(demoDraft())
})
afterEach(cleanup)

describe('the page of a pack', () => {
  const openCarrier = () => fireEvent.click(screen.getByText('Big old carrier').closest('button')!)

  test('opens from its row at its heading, and closes to that row', () => {
    render(<Packs />)
    openCarrier()
    expect(library.value.place).toMatchObject({ screen: 'packs', ...pageOf(2) })
    expect(screen.getByRole('heading', { level: 2 }).textContent).toBe('Big old carrier')
    expect(focused()).toBe('Big old carrier')
    expect(document.querySelector('.row')).toBeNull()
    press('Back to packs')
    expect(library.value.place.detail).toBeNull()
    expect(document.activeElement?.closest('.row')?.querySelector('.name')?.textContent).toBe(
      'Big old carrier',
    )
  })

  test('is closed by the way back, which stays in the app', async () => {
    render(<Packs />)
    openCarrier()
    act(() => history.back())
    await waitFor(() => expect(library.value.place.detail).toBeNull())
    expect(names()).toHaveLength(3)
  })

  test('of a pack that is deleted is left for the list, and undo brings the pack again', () => {
    render(<Packs />)
    openCarrier()
    press('Delete Big old carrier')
    expect(library.value.place.detail).toBeNull()
    expect(names()).toHaveLength(2)
    act(() => actions.undo())
    expect(names()).toHaveLength(3)
  })

  test('has its figures folded away, and all that its owner says of it', () => {
    render(<PacksScreen {...pageOf(1)} />)
    const figures = screen.getByRole('heading', { name: 'Edit figures' }).closest('details')
    expect(figures?.open).toBe(false)
    expect(document.querySelectorAll('.verdict')).toHaveLength(2)
    press('Take on this trip, frame in Two-way with removable frame')
    const pack = draft().packs[1]!
    expect(draft().takes).toEqual({ pack: pack.id, setup: pack.setups[0]!.id })
    expect(document.querySelector('.facts-line')?.textContent).toMatch(/taken$/)
    press('Not on this trip, frame in Two-way with removable frame')
    expect(draft().takes).toBeUndefined()
  })

  test('stands beside the list at a wide desk, whose order it holds while figures change', () => {
    const { happyDOM } = window as unknown as {
      happyDOM: { setViewport: (size: { width: number; height: number }) => void }
    }
    happyDOM.setViewport({ width: 1400, height: 900 })
    try {
      view.value = { ...AS_LISTED, order: 'mass' }
      render(<Packs />)
      openCarrier()
      const before = names()
      expect(before).toHaveLength(3)
      expect(document.querySelector('.row.open .name')?.textContent).toBe('Big old carrier')
      const [carrier] = draft().packs.slice(2)
      act(() => actions.setField(`packs/${carrier!.id}/setups/${carrier!.setups[0]!.id}/massKg`, 0.1, null))
      expect(names()).toEqual(before)
      press('Back to packs')
      expect(names()[0]).toBe('Big old carrier')
    } finally {
      happyDOM.setViewport({ width: 1024, height: 768 })
    }
  })
})

describe('the menu of a row', () => {
  const openMenu = (name: string) => {
    press(`Actions for ${name}`)
    return within(screen.getByRole('dialog', { name }))
  }

  test('stars, takes, sets aside with a reason or none, duplicates and deletes', () => {
    render(<Packs />)
    fireEvent.click(openMenu('Big old carrier').getByRole('button', { name: 'Star Big old carrier' }))
    expect(draft().packs[2]!.starred).toBe(true)
    expect(screen.queryByRole('dialog')).toBeNull()
    expect(focused()).toBe('⋯')
    fireEvent.click(openMenu('Big old carrier').getByText('Take on this trip'))
    expect(draft().takes?.pack).toBe(draft().packs[2]!.id)

    const menu = openMenu('Small frameless')
    fireEvent.click(menu.getByText('Set aside'))
    fireEvent.input(menu.getByLabelText('Why? May stay empty'), { target: { value: 'strap dug in' } })
    fireEvent.click(menu.getByText('Set it aside'))
    expect(draft().packs[0]!.aside).toBe('strap dug in')
    expect(names().at(-1)).toBe('Small frameless')
    fireEvent.click(openMenu('Small frameless').getByText('Use again'))
    expect(draft().packs[0]!.aside).toBeUndefined()

    fireEvent.click(openMenu('Small frameless').getByText('Duplicate'))
    expect(names()).toHaveLength(4)
    fireEvent.click(openMenu('Big old carrier').getByText('Delete'))
    expect(names()).toHaveLength(3)
    expect(lastLabel.value).toBe(`Delete pack Big old carrier, taken on “${openTrip.value!.draft.name}”`)
  })

  test('moves a row only while all stand as they are listed', () => {
    render(<Packs />)
    fireEvent.click(openMenu('Small frameless').getByText('Move down'))
    expect(names()[1]).toBe('Small frameless')
    act(() => {
      view.value = { ...AS_LISTED, order: 'mass' }
    })
    expect(openMenu('Small frameless').queryByText('Move down')).toBeNull()
  })
})

describe('the filter', () => {
  test('is folded away; what is on stands in words, each tapped away by itself', () => {
    render(<Packs />)
    expect(screen.queryByLabelText('Price up to')).toBeNull()
    press('Filter')
    fireEvent.click(screen.getByLabelText('With'))
    fireEvent.input(screen.getByLabelText(/^Main body from/), { target: { value: '60' } })
    fireEvent.input(screen.getByLabelText('Name, notes, tags'), { target: { value: 'OLD big' } })
    press('Filter')
    expect(names()).toEqual(['Big old carrier'])
    expect(screen.getByText('1 of 3 packs shown')).toBeTruthy()
    press('Remove the filter “OLD big”')
    press('Remove the filter with a frame')
    expect(screen.queryByText('Remove all')).toBeNull()
    press('Remove the filter main body from 60')
    expect(names()).toHaveLength(3)
    expect(screen.queryByRole('list', { name: 'Filters' })).toBeNull()
  })

  test('says so where nothing passes, and all are removed at once', () => {
    view.value = { ...AS_LISTED, sealed: true, fabric: 'silk', order: 'mass' }
    render(<Packs />)
    expect(screen.getByText('0 of 3 packs shown: tap a filter to remove it.')).toBeTruthy()
    press('Remove all')
    expect(names()).toHaveLength(3)
    expect(view.value.order).toBe('mass')
  })
})
