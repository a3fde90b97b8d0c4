import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type DraftPack, emptyDraft } from '../../src/plan'
import { PacksScreen } from '../../src/screens/packs'
import { AS_LISTED, view } from '../../src/screens/packs/view'
import { PacksOffer, usePlanWithPacks } from '../../src/screens/share'
import { actions, lastLabel, library, openTrip, shelf } from '../../src/store'
import { plain } from './compare-packs'

const pack = (id: string, facts: Partial<DraftPack> = {}): DraftPack => ({
  id,
  name: `Pack ${id}`,
  bodyLitres: 50,
  setups: [{ id: `${id}-s`, name: 'as sold', massKg: 1.2, ratedKg: 14, frame: 'framed' }],
  ...facts,
})

const packs = () => shelf.value.packs
const names = () => [...document.querySelectorAll('.row .name')].map(node => node.textContent?.trim())
const label = (text: string) =>
  within(document.querySelector<HTMLElement>('.pack-page')!).getByLabelText(text)
const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }))

beforeEach(() => {
  actions.openTripById(null)
  actions.setPlace({ screen: 'own-packs', detail: null, scrollY: 0 })
  view.value = AS_LISTED
  actions.editShelf('Fill', list => ({ ...list, packs: [pack('a'), pack('b'), pack('c')] }))
})
afterEach(cleanup)

describe('the packs with no trip open', () => {
  test('are all there whatever answer was asked for beside a trip', () => {
    view.value = { ...AS_LISTED, answer: 'does' }
    render(<PacksScreen detail={null} />)
    expect(names()).toEqual(['Pack a', 'Pack b', 'Pack c'])
  })

  test('keep the focus on a button whose words change', () => {
    render(<PacksScreen detail="packs/b" />)
    const star = screen.getByRole('button', { name: 'Star Pack b' })
    star.focus()
    fireEvent.click(star)
    expect(document.activeElement?.textContent).toBe('Remove star')
  })

  test('are listed, edited, added to and undone', () => {
    const { rerender } = render(<PacksScreen detail={null} />)
    expect(names()).toEqual(['Pack a', 'Pack b', 'Pack c'])
    rerender(<PacksScreen detail="packs/b" />)
    fireEvent.input(label('Price'), { target: { value: '120' } })
    expect(packs()[1]?.price).toBe(120)
    fireEvent.input(label('Price'), { target: { value: 'cheap' } })
    expect(shelf.value.typed).toEqual({ 'packs/b/price': 'cheap' })
    act(() => actions.undo())
    expect(packs()[1]).toEqual(pack('b'))
    rerender(<PacksScreen detail={null} />)
    press('Add a pack')
    expect(packs()).toHaveLength(4)
    // Its page opens, with nothing on it but what is to be filled in.
    rerender(<PacksScreen detail={library.value.place.detail} />)
    const figures = screen.getByRole('heading', { name: 'Edit figures' }).closest('details')
    expect(figures?.open).toBe(true)
    rerender(<PacksScreen detail="packs/b" />)
    expect(screen.getByRole('heading', { name: 'Edit figures' }).closest('details')?.open).toBe(false)
    expect(openTrip.value).toBeNull()
  })

  test('are never called enough, and one whose support could not bear a full load is told', () => {
    actions.editShelf('Fill', list => ({
      ...list,
      packs: [
        pack('big', { bodyLitres: 50, setups: [{ id: 's', massKg: 0.9, ratedKg: 9, frame: 'frameless' }] }),
      ],
    }))
    const { rerender } = render(<PacksScreen detail={null} />)
    expect(plain(document.querySelector('.row-says')?.textContent ?? '')).toBe(
      '50.0 L, 900 g · too heavy when full',
    )
    rerender(<PacksScreen detail="packs/big" />)
    const text = plain(document.querySelector('.verdict')?.textContent ?? '')
    expect(text).toMatch(
      /^Full, more than it can carry: about 11\.9 kg at 0\.22 kg\/L, over 9\.0 kg, its rating\./,
    )
    expect(text).toMatch(/Mass for each litre18/)
    expect(screen.queryByText(/^Enough|^Does$/)).toBeNull()
  })
})

describe('what the hiker says of a pack', () => {
  test('is kept with it: whose it is, a star, notes and tags', () => {
    render(<PacksScreen detail="packs/a" />)
    fireEvent.click(label('Mine'))
    press('Star Pack a')
    fireEvent.input(label('Notes'), { target: { value: 'squeaks' } })
    fireEvent.input(label('Tags, with commas between'), { target: { value: 'winter, loan,' } })
    expect(packs()[0]).toMatchObject({
      has: 'owned',
      starred: true,
      notes: 'squeaks',
      tags: ['winter', 'loan'],
    })
    fireEvent.click(label('Just known'))
    press('Remove star Pack a')
    fireEvent.input(label('Notes'), { target: { value: '' } })
    fireEvent.input(label('Tags, with commas between'), { target: { value: ' ' } })
    expect(packs()[0]).toEqual(pack('a'))
  })

  test('sets it aside with a reason: struck through, and last in every order', () => {
    const { rerender } = render(<PacksScreen detail="packs/a" />)
    press('Set aside Pack a')
    fireEvent.input(label('Why? May stay empty'), { target: { value: 'too hot ' } })
    press('Set it aside')
    expect(packs()[0]?.aside).toBe('too hot')
    rerender(<PacksScreen detail={null} />)
    expect(names()).toEqual(['Pack b', 'Pack c', 'Pack a'])
    expect(document.querySelector('s')?.textContent).toBe('Pack a')
    expect(screen.getByText(/“too hot”/)).toBeTruthy()
    expect(screen.getByRole('heading', { name: 'Set aside' })).toBeTruthy()
    act(() => {
      view.value = { ...AS_LISTED, order: 'mass' }
    })
    expect(names().at(-1)).toBe('Pack a')
  })

  test('filters: mine, starred, set aside, a tag', () => {
    actions.editShelf('Fill', list => ({
      ...list,
      packs: [
        pack('a', { has: 'owned' }),
        pack('b', { starred: true, tags: ['winter'] }),
        pack('c', { aside: '' }),
      ],
    }))
    render(<PacksScreen detail={null} />)
    const shown = (part: Partial<typeof AS_LISTED>) => {
      act(() => {
        view.value = { ...AS_LISTED, ...part }
      })
      return [...document.querySelectorAll('.row .name :is(bdi, s)')].map(node => node.textContent)
    }
    expect(shown({ has: 'owned' })).toEqual(['Pack a'])
    expect(shown({ has: 'wanted' })).toEqual([])
    expect(shown({ starred: true })).toEqual(['Pack b'])
    expect(shown({ aside: true })).toEqual(['Pack c'])
    expect(shown({ tag: 'winter' })).toEqual(['Pack b'])
  })
})

test('a pack that trips take says which, also in the step that deletes it', () => {
  actions.createTrip({ ...emptyDraft(), name: 'Ridge' })
  actions.setPlace({ screen: 'packs', detail: null, scrollY: 0 })
  render(<PacksScreen detail="packs/a" />)
  press('Take on this trip Pack a')
  expect(openTrip.value?.draft.takes).toEqual({ pack: 'a', setup: 'a-s' })
  act(() => void actions.createTrip({ ...emptyDraft(), name: 'Lake' }))
  expect(screen.getByText('Ridge', { selector: 'bdi' }).closest('p')?.textContent).toBe(
    'Also taken on: Ridge.',
  )
  fireEvent.click(screen.getByRole('button', { name: 'Delete Pack a' }))
  expect(lastLabel.value).toBe('Delete pack Pack a, taken on “Ridge”')
  act(() => actions.undo())
  expect(packs()).toHaveLength(3)
})

test('packs that are given add what is new, in one step, and say what is there already', () => {
  const given = [
    pack('x', { name: 'Pack a' }),
    pack('y', { name: 'New one' }),
    pack('z', { name: 'Pack b', bodyLitres: 20 }),
  ]
  render(<PacksOffer packs={given} leftOut={[]} onDone={() => undefined} />)
  expect(document.querySelector('.lead')?.textContent).toBe('3 packs, 1 of them yours already.')
  fireEvent.click(screen.getByRole('button', { name: 'Add 2 packs' }))
  expect(packs().map(({ name }) => name)).toEqual(['Pack a', 'Pack b', 'Pack c', 'New one', 'Pack b (given)'])
  act(() => actions.undo())
  expect(packs()).toHaveLength(3)
})

describe('the figures that the hiker goes by', () => {
  const openFigures = () => {
    const details = screen.getByText(/^Your figures/).closest('details')!
    act(() => {
      details.open = true
      fireEvent(details, new Event('toggle'))
    })
    return within(details)
  }

  test('say in words which packs are light or cheap, at or under the limit, and nothing where none is set', () => {
    actions.editShelf('Fill', list => ({
      ...list,
      packs: [pack('a', { price: 100 }), pack('b', { bodyLitres: 40, price: 100 }), pack('c')],
    }))
    render(<PacksScreen detail={null} />)
    const facts = () => [...document.querySelectorAll('.row-says')].map(node => node.textContent)
    expect(facts().join()).not.toMatch(/light|cheap/)
    fireEvent.input(openFigures().getByLabelText(/^Light for its litres: at most/), {
      target: { value: '24' },
    })
    fireEvent.input(openFigures().getByLabelText(/^Cheap for its litres: at most/), {
      target: { value: '2' },
    })
    expect(shelf.value.figures).toEqual({ under: { gramsPerLitre: 24, pricePerLitre: 2 } })
    // 1200 g over 50, 40 and 50 L; 100 over 50 and 40 L; the third has no price.
    expect(
      facts().map(text => text?.match(/light[^,·]*|cheap[^,·]*/g)?.map(word => word.trim()) ?? []),
    ).toEqual([['light for its litres', 'cheap for its litres'], [], ['light for its litres']])
    fireEvent.input(openFigures().getByLabelText(/^Light for its litres: at most/), { target: { value: '' } })
    expect(shelf.value.figures?.under).toEqual({ pricePerLitre: 2 })
  })

  test('may be one of their own, under their own name, by which packs stand in order', () => {
    actions.editShelf('Fill', list => ({
      ...list,
      packs: [pack('a', { price: 100 }), pack('b', { bodyLitres: 40, price: 50 }), pack('c')],
    }))
    render(<PacksScreen detail={null} />)
    fireEvent.input(openFigures().getByLabelText('Its name'), { target: { value: 'Worth' } })
    fireEvent.change(openFigures().getByLabelText('Mass'), { target: { value: '1' } })
    fireEvent.change(openFigures().getByLabelText('Price'), { target: { value: '1' } })
    fireEvent.change(openFigures().getByLabelText('Main body litres'), { target: { value: '-1' } })
    expect(shelf.value.figures?.measure).toEqual({
      name: 'Worth',
      powers: { massG: 1, price: 1, bodyLitres: -1 },
    })
    expect(openFigures().getByRole('status').textContent).toMatch(
      /^Worth = mass × price ÷ main body litres\./,
    )
    fireEvent.change(screen.getByLabelText('Sorted by'), { target: { value: 'own' } })
    // 1200 × 100 / 50 = 2400, 1200 × 50 / 40 = 1500; without a price there is none.
    expect(names()).toEqual(['Pack b', 'Pack a', 'Pack c'])
  })
})

test('a plan that is given on takes along all packs, the starred, the one taken, or none', () => {
  actions.editShelf('Fill', list => ({
    ...list,
    packs: [pack('a', { starred: true, notes: 'mine alone' }), pack('b'), pack('c', { setups: [] })],
  }))
  actions.createTrip({ ...emptyDraft(), name: 'Ridge', takes: { pack: 'b', setup: 'b-s' } })
  const given: unknown[] = []
  function Plan() {
    const plan = usePlanWithPacks()
    given.push(plan?.document.packs)
    expect(JSON.stringify(plan?.document)).not.toContain('mine alone')
    return <>{plan?.choice}</>
  }
  render(<Plan />)
  const chosen = (text: string) => {
    fireEvent.click(screen.getByLabelText(text))
    return (given.at(-1) as { name: string }[]).map(({ name }) => name)
  }
  expect(chosen('Starred (1)')).toEqual(['Pack a'])
  expect(chosen('Taken (1)')).toEqual(['Pack b'])
  expect(chosen('None')).toEqual([])
  // A pack without a set-up is no part of any plan.
  expect(chosen('All (3)')).toEqual(['Pack a', 'Pack b'])
})
