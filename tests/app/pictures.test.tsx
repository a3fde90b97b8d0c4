// The two pictures as people meet them: by keyboard, by touch, by ear and as tables.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { Cutaway, type CutawayProps, LoadLine, type LoadLineProps } from '../../src/components/graphics'
import type { Moment, Shares } from '../../src/reckon'
import { openTables } from './details'

afterEach(cleanup)

const kg = (value: number) => `${value.toFixed(2)} kg`
const format = { kg, km: (value: number) => `${value.toFixed(1)} km` }
const litresText = (value: number) => `${value.toFixed(1)} L`

const at = (
  stop: number,
  phase: Moment['phase'],
  km: number,
  day: number,
  parts: Partial<Shares>,
): Moment => {
  const shares = { kept: 6, daily: 0, nightly: 0, spread: 0, water: 0, rubbish: 0, ...parts }
  const total = Object.values(shares).reduce((sum, value) => sum + value, 0)
  const litres = { ...shares, kept: 30 }
  const volumes = { bodyLitres: 44 + shares.water, rigidLitres: 0, softLitres: 0, outsideLitres: 0, litres }
  return {
    stop,
    phase,
    km,
    day,
    hours: km / 3,
    bodyKg: 0,
    loose: { kg: 0, litres: 0 },
    wantedLitres: 0,
    fullWaterKg: 0,
    kg: { ...shares, total },
    ...volumes,
  }
}

const moments = [
  at(0, 'depart', 0, 1, { daily: 1.5, nightly: 0.12, spread: 0.16, water: 2 }),
  at(1, 'arrive', 10, 1, { daily: 1.25, nightly: 0.12, spread: 0.08, water: 0.5, rubbish: 0.04 }),
  at(1, 'depart', 10, 2, { daily: 0.75, nightly: 0.06, spread: 0.08, water: 4, rubbish: 0.07 }),
  at(2, 'arrive', 25, 2, { daily: 0.25, nightly: 0.06, water: 0.5, rubbish: 0.09 }),
]
const stops: LoadLineProps['stops'] = [
  { name: 'Mill Bridge', water: 'sure', nights: 0, resupply: false },
  { name: 'Larch Spring', water: 'sure', nights: 1, resupply: true },
  { name: 'Quarry Halt', water: 'none', nights: 0, resupply: false },
]
const limits = [{ label: 'With stays', kg: 15.9 }]

function show(over: Partial<LoadLineProps> = {}) {
  const onMoment = vi.fn()
  const props = { moments, stops, limits, format, moment: 1, onMoment, ...over }
  const drawn = render(<LoadLine {...props} />)
  openTables()
  return { onMoment, ...drawn }
}

describe('the load line', () => {
  it('tells in one sentence what it shows', () => {
    show()
    expect(screen.getByRole('img').getAttribute('aria-label')).toBe(
      'The load carried along the trip: 9.78 kg when you leave \u2068Mill Bridge\u2069, day 1; most, 10.96 kg, when you leave ' +
        '\u2068Larch Spring\u2069, day 2; 6.90 kg at the end, \u2068Quarry Halt\u2069, at 25.0 km. ' +
        'Limits: \u2068With stays\u2069 15.90 kg.',
    )
  })

  it('has a slider that says the moment as a sentence with its parts', () => {
    show()
    const slider = screen.getByRole('slider', { name: 'Moment of the trip' })
    expect(slider.getAttribute('aria-valuenow')).toBe('2')
    expect(slider.getAttribute('aria-valuemax')).toBe('4')
    expect(slider.getAttribute('aria-valuetext')).toBe(
      '7.99 kg when you reach \u2068Larch Spring\u2069, day 1, at 10.0 km, of it 6.00 kg gear, 0.08 kg used up, ' +
        '0.12 kg fuel, 1.25 kg food, 0.04 kg rubbish, 0.50 kg water',
    )
  })

  it.each([
    ['ArrowRight', 2],
    ['ArrowUp', 2],
    ['ArrowLeft', 0],
    ['ArrowDown', 0],
    ['End', 3],
    ['Home', 0],
  ])('%s moves the cursor to moment %i', (key, moment) => {
    const { onMoment } = show()
    fireEvent.keyDown(screen.getByRole('slider'), { key })
    expect(onMoment).toHaveBeenCalledExactlyOnceWith(moment)
  })

  it('stops at its ends, and leaves keys alone that are not its own', () => {
    const { onMoment } = show({ moment: 3 })
    const slider = screen.getByRole('slider')
    fireEvent.keyDown(slider, { key: 'ArrowRight' })
    fireEvent.click(screen.getByRole('button', { name: 'Later moment' }))
    expect(fireEvent.keyDown(slider, { key: 'Tab' })).toBe(true)
    expect(fireEvent.keyDown(slider, { key: 'ArrowLeft', altKey: true })).toBe(true)
    expect(onMoment).not.toHaveBeenCalled()
  })

  it('steps by buttons too', () => {
    const { onMoment } = show()
    fireEvent.click(screen.getByRole('button', { name: 'Later moment' }))
    fireEvent.click(screen.getByRole('button', { name: 'Earlier moment' }))
    expect(onMoment.mock.calls).toEqual([[2], [0]])
  })

  it('follows a tap, and a drag sideways, but not a touch that scrolls the page', () => {
    const { onMoment } = show()
    const slider = screen.getByRole('slider')
    fireEvent.click(slider, { clientX: 1000 })
    expect(onMoment).toHaveBeenLastCalledWith(3)
    onMoment.mockClear()
    fireEvent.pointerDown(slider, { clientX: 150, clientY: 50, pointerType: 'touch' })
    fireEvent.pointerMove(slider, { clientX: 152, clientY: 90, pointerType: 'touch' })
    fireEvent.pointerCancel(slider)
    fireEvent.pointerMove(slider, { clientX: 1000, clientY: 90, pointerType: 'touch' })
    expect(onMoment).not.toHaveBeenCalled()
    fireEvent.pointerDown(slider, { clientX: 150, clientY: 50, pointerType: 'touch' })
    fireEvent.pointerMove(slider, { clientX: 1000, clientY: 52, pointerType: 'touch' })
    expect(onMoment).toHaveBeenLastCalledWith(3)
  })

  it('has every plotted value in its table, with heads and a caption', () => {
    show()
    const table = document.querySelector('table')!
    expect(within(table).getByText('The load at every stop').tagName).toBe('CAPTION')
    expect(table.querySelectorAll('thead th[scope="col"]')).toHaveLength(11)
    const cellsOf = (row: Element) => [...row.children].map(cell => cell.textContent)
    const rows = [...table.querySelectorAll('tbody tr')].map(cellsOf)
    moments.forEach((m, i) => {
      const plotted = [m.kg.total, m.kg.water, m.kg.rubbish, m.kg.daily, m.kg.nightly, m.kg.spread, m.kg.kept]
      expect(rows[i]!.slice(1, 8)).toEqual(plotted.map(kg))
    })
    expect(rows[2]).toContain('water, 1 night, resupply')
    expect(rows[4]!.slice(0, 2)).toEqual(['Limit: With stays', '15.90 kg'])
    expect(table.querySelectorAll('tbody th[scope="row"]')).toHaveLength(5)
  })

  it('shows names as text, whatever they contain, isolated from the sentence, in full in the table', () => {
    const name =
      '<img src=x onerror=alert(1)> \u202egnirpS \u2069 of a very long name that cannot fit the picture'
    show({ stops: [{ ...stops[0]!, name }, stops[1]!, stops[2]!] })
    expect(document.querySelector('img')).toBeNull()
    expect(document.querySelector('tbody bdi')!.textContent).toBe(name)
    const spoken = screen.getByRole('img').getAttribute('aria-label')!
    expect(spoken).not.toMatch(/\u202e/)
    expect(spoken.match(/\u2068/g)).toHaveLength(spoken.match(/\u2069/g)!.length)
    const drawn = [...document.querySelectorAll('svg text')].map(text => text.textContent)
    expect(drawn.some(text => text!.includes('<img') && text!.includes('…'))).toBe(true)
  })

  it('holds a moment outside the trip to the nearest there is', () => {
    show({ moment: 99 })
    expect(screen.getByRole('slider').getAttribute('aria-valuenow')).toBe('4')
  })

  it('keeps its patterns apart from those of another on the page', () => {
    render(
      <>
        <LoadLine {...{ moments, stops, limits, format, moment: 0, onMoment() {} }} />
        <LoadLine {...{ moments, stops, limits, format, moment: 0, onMoment() {} }} />
      </>,
    )
    const ids = [...document.querySelectorAll('[id]')].map(element => element.id)
    expect(ids.length).toBeGreaterThan(10)
    expect(new Set(ids).size).toBe(ids.length)
    for (const filled of document.querySelectorAll('[fill^="url(#"]'))
      expect(ids).toContain(filled.getAttribute('fill')!.slice(5, -1))
  })

  it('draws a trip of 60 days with all of its 120 moments', () => {
    const long = Array.from({ length: 120 }, (_, i) =>
      at(Math.ceil(i / 2), i % 2 ? 'arrive' : 'depart', Math.ceil(i / 2) * 15, 1 + (i >> 1), {
        water: 1 + (i % 4),
      }),
    )
    const places = Array.from({ length: 61 }, (_, i) => ({ ...stops[1]!, name: `Camp ${i}` }))
    show({ moments: long, stops: places })
    expect(document.querySelector('.crest')!.getAttribute('d')!.match(/L/g)).toHaveLength(119)
    expect(document.querySelectorAll('tbody tr')).toHaveLength(121)
  })

  it('draws nothing for no moments', () => {
    expect(show({ moments: [] }).container.innerHTML).toBe('')
  })
})

function cutaway(over: Partial<CutawayProps> = {}) {
  const drawn = render(
    <Cutaway
      {...{ name: 'Pack B', bodyLitres: 52, collarLitres: 0, innerHeightCm: null, scaleLitres: 52 }}
      need={{ bodyLitres: 48, bodyLitresSafe: 50.6, sigmaV: 2 }}
      moment={moments[2]!}
      at="leaving Larch Spring, day 2"
      format={{ system: 'metric', litres: litresText, litresUp: value => `${Math.ceil(value)}\u00a0L` }}
      {...over}
    />,
  )
  openTables()
  return drawn
}

describe('the cutaway', () => {
  it('tells in sentences what it shows', () => {
    cutaway()
    expect(screen.getByRole('img').getAttribute('aria-label')).toBe(
      '\u2068Pack B\u2069, cut open and seen from the front. Leaving Larch Spring, day 2: 48.0 L in a body of ' +
        '52.0 L, 4.0 L free. The trip needs 48\u00a0L at its fullest, likely 45 to 51\u00a0L.',
    )
  })

  it('has its layers touched and gone through by keys, each told in words', () => {
    const onChoose = vi.fn()
    const layers = [
      { band: 'kept', litres: 30 },
      { band: 'water', litres: 18 },
    ] as const
    const hand = { chosen: 0, onChoose, textOf: (index: number) => ['Sleep, 30 L', 'Water, 18 L'][index]! }
    cutaway({ layers, hand, isBare: true })
    const slider = screen.getByRole('slider', { name: 'Layer in the pack' })
    expect(slider.getAttribute('aria-valuetext')).toBe('Sleep, 30 L')
    fireEvent.keyDown(slider, { key: 'ArrowUp' })
    fireEvent.keyDown(slider, { key: 'ArrowDown' })
    expect(onChoose.mock.calls).toEqual([[1], [0]])
    const lower = document.querySelectorAll('.layer')[0]!
    fireEvent.click(slider, { clientY: Number(lower.getAttribute('y')) + 1 })
    expect(onChoose).toHaveBeenLastCalledWith(0)
    expect(document.querySelector('.layer-chosen')).not.toBeNull()
  })

  it('names what does not fit', () => {
    const { container } = cutaway({ bodyLitres: 44.6 })
    expect(container.textContent).toContain('48.0 L in a body of 44.6 L, 3.4 L over the brim.')
    expect(container.querySelector('.heap')).not.toBeNull()
  })

  it('tells a collar that takes the rest from one that does not', () => {
    expect(cutaway({ bodyLitres: 44, collarLitres: 6 }).container.textContent).toContain(
      '4.0 L over the brim, inside the collar',
    )
    expect(document.querySelector('.heap')).toBeNull()
    cleanup()
    expect(cutaway({ bodyLitres: 40, collarLitres: 6 }).container.textContent).toContain(
      '8.0 L over the brim, 2.0 L more than the collar takes',
    )
    expect(document.querySelector('.collar')).not.toBeNull()
  })

  it('draws the needed body alone where there is no pack', () => {
    const { container } = cutaway({ name: 'The body this trip needs', bodyLitres: null })
    expect(container.querySelector('.brim')).toBeNull()
    expect(container.querySelector('.body-wanted')).not.toBeNull()
    expect(container.textContent).toContain('48.0 L in the main body')
  })

  it('has every figure in its table, the layers adding up to what is in the body', () => {
    cutaway({ bodyLitres: 40, collarLitres: 6 })
    const cells = Object.fromEntries(
      [...document.querySelectorAll('tbody tr')].map(row => [
        row.querySelector('th')!.textContent,
        Number.parseFloat(row.querySelector('td')!.textContent!),
      ]),
    )
    expect(cells).toMatchObject({
      'All in the main body': 48,
      'Body to the brim': 40,
      'Over the brim': 8,
      Collar: 6,
      'More than body and collar': 2,
      'Need at its fullest': 48,
      'Likely need, from': 45.4,
      'Likely need, to': 50.6,
    })
    const layers = ['Water', 'Rubbish', 'Food', 'Fuel', 'Used up', 'Gear'].map(word => cells[word]!)
    expect(layers.reduce((sum, value) => sum + value, 0)).toBeCloseTo(48, 0)
    expect(layers.every(value => value >= 0)).toBe(true)
  })

  it('says that packing gaps are spread, and where its height comes from', () => {
    cutaway()
    expect(document.body.textContent).toContain('0.55 times as wide as high')
    cleanup()
    const { container } = cutaway({ innerHeightCm: 58 })
    expect(container.textContent).toContain('The height is the one stated.')
    expect(container.textContent).toContain('Gaps left by packing are spread through the layers.')
  })

  it('teaches with a sentence where there is neither pack nor need', () => {
    const need = { bodyLitres: 0, bodyLitresSafe: 0, sigmaV: 0 }
    const { container } = cutaway({ bodyLitres: null, need, moment: { ...moments[2]!, bodyLitres: 0 } })
    expect(container.textContent).toContain('Add gear to fill it')
    expect(container.querySelector('[role="img"]')).toBeNull()
  })
})
