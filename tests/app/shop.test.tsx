// At the shop: a tag is judged while it is typed, as far as it is known, and kept in one step.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { partlyJudged } from '../../src/report/compare-packs'
import { ShopScreen } from '../../src/screens/shop'
import { fromDetail, readTag, toDetail } from '../../src/screens/shop/tag-text'
import { chosen } from '../../src/screens/trips/which'
import { actions, library, loadEngine, trips } from '../../src/store'
import { demoDraft, draft, judged, openDraft, plain } from './compare-packs'

const formats = formatsIn('metric')
const field = (name: RegExp) => screen.getByRole('textbox', { name })
const type = (name: RegExp, text: string) => fireEvent.input(field(name), { target: { value: text } })

beforeAll(loadEngine)
beforeEach(() => {
  openDraft(demoDraft())
  actions.setPlace({ screen: 'shop', detail: 'price=1', scrollY: 0 })
})
afterEach(cleanup)

describe('what to ask for', () => {
  test('is the need of the trip: litres, rating, frame, sizes', () => {
    render(<ShopScreen />)
    const { need } = judged().reckoning
    for (const figure of [formats.litresUp(need.bodyLitresSafe), formats.cm(need.longestCm!), 'Yes'])
      expect(screen.getByText(plain(figure))).toBeTruthy()
  })

  test('takes the mass of the pack at hand once it is typed', () => {
    render(<ShopScreen />)
    const { need } = judged().reckoning
    type(/Pack mass/, '1500')
    expect(screen.getByText(plain(formats.kg(need.peakLoadFullWaterKg + 0.05 + 1.5)))).toBeTruthy()
  })
})

describe('a tag', () => {
  test('is judged like the same pack among the others', () => {
    render(<ShopScreen />)
    type(/Main body/, '75')
    type(/Pack mass/, '2,3 kg')
    type(/Rated load/, '25')
    type(/Pockets/, '5')
    expect(screen.getAllByText('Does').length).toBeGreaterThan(0)
    type(/Rated load/, '9–13 kg')
    expect(screen.getByText(/From 9.0.kg to 13.0.kg: the lower end counts/)).toBeTruthy()
    expect(screen.getAllByText('Does not').length).toBeGreaterThan(0)
    expect(screen.getByText('Overloaded')).toBeTruthy()
  })

  test('with a total has its main body worked out, and says from what', () => {
    render(<ShopScreen />)
    fireEvent.click(screen.getByRole('radio', { name: 'A total' }))
    type(/Total/, '60')
    expect(screen.getByText(/What the pockets hold is missing/)).toBeTruthy()
    type(/Pockets/, '488 cu in')
    expect(screen.getByText(/Main body: 60.0.L − 8.0.L = 52.0.L/)).toBeTruthy()
    type(/Pockets/, '70')
    expect(screen.getByText(/leave nothing of a total/)).toBeTruthy()
  })

  test('half typed says what is missing and judges the rest', () => {
    render(<ShopScreen />)
    expect(screen.queryByText('Keep it as a candidate')).toBeNull()
    type(/Main body/, '20')
    expect(screen.getByText('Too small')).toBeTruthy()
    expect(screen.getByText(/its mass is missing/i)).toBeTruthy()
  })

  test('keeps text it cannot read, and says so when the field is left', () => {
    render(<ShopScreen />)
    const body = field(/Main body/) as HTMLInputElement
    fireEvent.focus(body)
    fireEvent.input(body, { target: { value: '45 litrs' } })
    expect(screen.queryByText(/is not known here/)).toBeNull()
    fireEvent.blur(body)
    expect(screen.getByText(/is not known here/)).toBeTruthy()
    expect(body.value).toBe('45 litrs')
  })

  test('is kept as a candidate in one step that undo takes back, and the fields are free again', () => {
    render(<ShopScreen />)
    type(/Main body/, '52')
    type(/Pack mass/, '1200')
    const before = draft().packs.length
    fireEvent.click(screen.getByText('Keep it as a candidate'))
    expect(draft().packs).toHaveLength(before + 1)
    expect(draft().packs.at(-1)).toMatchObject({ bodyLitres: 52, setups: [{ massKg: 1.2, frame: 'framed' }] })
    expect((field(/Main body/) as HTMLInputElement).value).toBe('')
    fireEvent.click(screen.getByText('Undo'))
    expect(draft().packs).toHaveLength(before)
  })

  test('is remembered with the place, so that a reload comes back to it', () => {
    render(<ShopScreen />)
    type(/Main body/, '3000 cu in')
    expect(fromDetail(library.value.place.detail)).toMatchObject({ body: '3000 cu in' })
    cleanup()
    render(<ShopScreen />)
    expect((field(/Main body/) as HTMLInputElement).value).toBe('3000 cu in')
  })
})

describe('for several trips', () => {
  test('the tag is judged for each, and the line says for how many it does', () => {
    const small = { ...demoDraft(), name: 'Light', gear: demoDraft().gear.slice(0, 2) }
    openDraft({ ...demoDraft(), name: 'Full' })
    openDraft(small)
    chosen.value = new Map(
      [...trips.value].map(
        ([
          id,
          {
            draft: { name },
          },
        ]) => [id, name === 'Light' || name === 'Full'],
      ),
    )
    actions.setPlace({ screen: 'shop', detail: 'body=30&mass=900&rated=18', scrollY: 0 })
    render(<ShopScreen />)
    fireEvent.click(screen.getByRole('radio', { name: 'All my trips' }))
    const of = [...trips.value.values()].filter(({ id }) => chosen.value.get(id)).length
    expect(screen.getByText(`Does for 1 of ${of} trips`)).toBeTruthy()
    type(/Pack mass/, '')
    expect(screen.getByText(`Does not for 1 of ${of} trips`)).toBeTruthy()
    fireEvent.click(screen.getByRole('radio', { name: 'This trip' }))
    chosen.value = new Map()
  })
})

describe('the text of a tag', () => {
  test('comes back from the place as it went in, whatever was typed', () => {
    const words = fc.string({ maxLength: 50 })
    fc.assert(
      fc.property(words, words, words, fc.constantFrom('body', 'total'), (body, mass, name, gives) => {
        const tag = { ...fromDetail(null), body, mass, name, gives } as const
        expect(fromDetail(toDetail(tag))).toEqual(tag)
      }),
    )
  })

  test('is read without throwing from any place', () => {
    fc.assert(fc.property(fc.string(), text => void readTag(fromDetail(text), 'us')))
  })
})

describe('a pack known in part', () => {
  const litres = fc.integer({ min: 20, max: 90 })
  const mass = fc.integer({ min: 1, max: 40 }).map(n => n / 10)
  const rating = fc.option(fc.integer({ min: 5, max: 30 }), { nil: undefined })
  const frame = fc.constantFrom('framed', 'frameless')

  test('is never refused for what it lacks: where part of it will not do, the whole does not', () => {
    const { plan } = judged()
    fc.assert(
      fc.property(litres, mass, rating, frame, (bodyLitres, massKg, ratedKg, framed) => {
        const setup = { ratedKg, frame: framed }
        const whole = partlyJudged(plan, { bodyLitres, setup: { ...setup, massKg } }, formats)!
        const parts = [
          partlyJudged(plan, { bodyLitres, setup }, formats)!,
          partlyJudged(plan, { setup: { ...setup, massKg } }, formats)!,
        ]
        expect(whole.missing).toEqual([])
        for (const part of parts) {
          expect(part.missing.length).toBeGreaterThan(0)
          if (part.answer === 'does-not') expect(whole.answer).toBe('does-not')
        }
      }),
      { numRuns: 15 },
    )
  })

  test('is answered in full as the engine does, once nothing is missing', () => {
    const { plan } = judged()
    for (const pack of plan.packs) {
      const [setup] = pack.setups
      const { setups: _setups, ...figures } = pack
      const alone = reckon({ ...plan, packs: [{ ...pack, setups: [setup!] }] })
      const answer = partlyJudged(plan, { ...figures, setup: setup! }, formats)!.answer
      expect(answer).toBe(alone.ok && alone.reckoning.packs[0]!.answer)
    }
  })
})
