// The terrain under the load line: drawn along the same km, with gaps as gaps, and told in words and figures.

import { cleanup, render, screen, within } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { LoadLine, type LoadLineProps } from '../../src/components/graphics'
import { guessWidth } from '../../src/components/graphics/fit-text'
import type { LoadPicture } from '../../src/components/graphics/load-picture'
import { planLoadLine } from '../../src/components/graphics/load-plan'
import { elevationAt } from '../../src/components/graphics/terrain'
import type { Moment } from '../../src/reckon'
import { openTables } from './details'

afterEach(cleanup)

const room = (widthPx: number, emPx = 13) => ({
  widthPx,
  emPx,
  measure: guessWidth(emPx),
  measureBold: guessWidth(emPx * 1.15),
})

const at = (stop: number, phase: Moment['phase'], km: number): Moment => {
  const shares = { kept: 6, daily: 1, nightly: 0, spread: 0, water: 2, rubbish: 0 }
  const volumes = {
    bodyLitres: 30,
    rigidLitres: 0,
    softLitres: 0,
    outsideLitres: 0,
    litres: shares,
    bodyKg: 0,
    loose: { kg: 0, litres: 0 },
    wantedLitres: 0,
    fullWaterKg: 0,
  }
  return { stop, phase, km, day: 1, hours: km / 4, kg: { ...shares, total: 9 }, ...volumes }
}

const moments = [
  at(0, 'depart', 0),
  at(1, 'arrive', 4),
  at(1, 'depart', 4),
  at(2, 'arrive', 7),
  at(2, 'depart', 7),
]
const all = [...moments, at(3, 'arrive', 10)]
const stops: LoadPicture['stops'] = [
  { name: 'Ford', water: 'sure', nights: 0, resupply: false },
  { name: 'Col', water: 'none', nights: 1, resupply: false },
  { name: 'Bog', water: 'doubtful', nights: 0, resupply: false },
  { name: 'Barn', water: 'none', nights: 0, resupply: false },
]
const format: LoadPicture['format'] = {
  kg: v => `${v.toFixed(1)} kg`,
  km: v => `${v.toFixed(1)} km`,
  metres: v => `${v} m`,
}
const profile = [
  { km: 0, eleM: 100 },
  { km: 2, eleM: 500 },
  { km: 4, eleM: 300 },
  { km: 6, eleM: null },
  { km: 8, eleM: 200 },
  { km: 10, eleM: 240 },
]
const shown: LoadPicture = { moments: all, stops, limits: [], format, profile }

const terrainOf = (over: Partial<LoadPicture> = {}, widthPx = 400) =>
  planLoadLine({ ...shown, ...over }, room(widthPx)).terrain!

describe('the elevation at a place', () => {
  it('lies straight between the points of the track', () => {
    expect([0, 1, 2, 3, 4, 9, 10].map(km => elevationAt(km, shown))).toEqual([
      100, 300, 500, 400, 300, 220, 240,
    ])
  })

  it('is not known beside a missing point, and none is invented', () => {
    expect([4.1, 5, 6, 7, 7.9].map(km => elevationAt(km, shown))).toEqual([null, null, null, null, null])
  })

  it('is taken at the same share of the way where the trip is a little longer than its track', () => {
    const longer = all.map(m => ({ ...m, km: m.km * 1.01 }))
    expect(elevationAt(2.02, { moments: longer, profile })).toBeCloseTo(500, 9)
    expect(elevationAt(10.1, { moments: longer, profile })).toBe(240)
  })

  it('stays between the lowest and the highest, wherever one asks', () => {
    const profiles = fc.array(
      fc.record({ km: fc.double({ min: 0.01, max: 5, noNaN: true }), eleM: fc.nat(3000) }),
      {
        minLength: 2,
        maxLength: 30,
      },
    )
    fc.assert(
      fc.property(profiles, fc.double({ min: 0, max: 10, noNaN: true }), (steps, km) => {
        let far = 0
        const made = steps.map(({ km, eleM }, i) => {
          far += i === 0 ? 0 : km
          return { km: far, eleM }
        })
        const eleM = elevationAt(km, { moments: all, profile: made })!
        expect(eleM).toBeGreaterThanOrEqual(Math.min(...steps.map(step => step.eleM)) - 1e-6)
        expect(eleM).toBeLessThanOrEqual(Math.max(...steps.map(step => step.eleM)) + 1e-6)
      }),
    )
  })
})

describe('the terrain laid out', () => {
  it('has the km axis of the load, and a gap where the track has one', () => {
    const plan = planLoadLine(shown, room(400))
    const { runs, gaps } = plan.terrain!
    const { left, right } = plan.plot
    const x = (km: number) => left + (km / 10) * (right - left)
    expect(runs.map(run => run.map(dot => dot.x))).toEqual([
      [x(0), x(2), x(4)],
      [x(8), x(10)],
    ])
    expect(gaps).toEqual([{ from: x(4), to: x(8) }])
    expect(runs[0]![2]!.x).toBe(plan.strip.stopXs[1])
  })

  it('stands below the load, above the marks of the stops, inside the part that answers to touch', () => {
    for (const widthPx of [280, 400, 900]) {
      const plan = planLoadLine(shown, room(widthPx))
      const { top, bottom, runs } = plan.terrain!
      expect(top).toBeGreaterThan(plan.plot.bottom)
      for (const { y } of runs.flat()) {
        expect(y).toBeGreaterThanOrEqual(top - 0.01)
        expect(y).toBeLessThan(bottom)
      }
      for (const mark of plan.strip.marks) expect(mark.y).toBeGreaterThan(bottom)
      expect(plan.strip.bottom).toBeGreaterThan(bottom)
    }
  })

  it('puts the stops on the ridge, and none into a gap', () => {
    const { stopYs, runs } = terrainOf()
    expect(stopYs).toEqual([runs[0]![0]!.y, runs[0]![2]!.y, null, runs[1]![1]!.y])
  })

  it('names its highest and lowest at their heights; level ground has one figure', () => {
    const { labels, runs } = terrainOf()
    expect(labels.map(({ text }) => text)).toEqual(['500 m', '100 m'])
    expect(labels.map(({ y }) => y)).toEqual([runs[0]![1]!.y, runs[0]![0]!.y])
    const level = profile.map(({ km }) => ({ km, eleM: 40 }))
    expect(terrainOf({ profile: level }).labels.map(({ text }) => text)).toEqual(['40 m'])
  })

  it('does not make a mountain of a rise of ten metres, nor lay its two figures over each other', () => {
    const low = profile.map(({ km }, i) => ({ km, eleM: 40 + i * 2 }))
    const { runs, top, bottom, labels } = terrainOf({ profile: low })
    const ys = runs.flat().map(({ y }) => y)
    expect(Math.max(...ys) - Math.min(...ys)).toBeLessThan((bottom - top) / 8)
    expect(labels[1]!.y - labels[0]!.y).toBeGreaterThanOrEqual(17)
  })

  it('says its range in one line above where the type is too large for figures at the side', () => {
    const { labels, above, top } = planLoadLine(shown, room(260, 26)).terrain!
    expect(labels).toEqual([])
    expect(above!.text).toBe('100 m to 500 m')
    expect(above!.y).toBeLessThan(top)
  })

  it.each([
    ['there is no profile', { profile: undefined }],
    ['no elevation is known', { profile: profile.map(({ km }) => ({ km, eleM: null })) }],
    ['the trip has no km', { moments: all.map(m => ({ ...m, km: 0 })) }],
  ])('is absent where %s, and the load line is as without it', (_, over) => {
    const plain: Partial<LoadPicture> = { ...shown, ...over }
    delete plain.profile
    const got = planLoadLine({ ...shown, ...over }, room(400))
    expect(got.terrain).toBeNull()
    expect(got).toEqual(planLoadLine(plain as LoadPicture, room(400)))
  })
})

describe('the terrain as people meet it', () => {
  const show = (over: Partial<LoadLineProps> = {}) =>
    render(<LoadLine {...{ ...shown, moment: 1, onMoment() {}, ...over }} />)

  it('is in the summary and in the sentence of a moment', () => {
    show()
    expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(
      / Below it the terrain, from 100 m to 500 m, not known everywhere\.$/,
    )
    expect(screen.getByText(/^day 1 · .* kg · 300 m high$/)).toBeTruthy()
    expect(screen.getByRole('slider').getAttribute('aria-valuetext')).toMatch(
      /when you reach .*Col.*, day 1, at 4\.0 km, 300 m high/,
    )
  })

  it('has the elevation of each stop in the table, and says where it is not known', () => {
    show()
    openTables()
    const table = document.querySelector('table')!
    const column = within(table)
      .getAllByRole('columnheader', { hidden: true })
      .findIndex(head => head.textContent === 'Elevation')
    const cells = [...table.querySelectorAll('tbody tr')].map(row => row.children[column]!.textContent)
    expect(cells).toEqual(['100 m', '300 m', '300 m', 'not known', 'not known', '240 m'])
  })

  it('has a drop on each source and a spot on every other stop of known height', () => {
    const { container } = show()
    const terrain = container.querySelector('.terrain')!
    expect(terrain.querySelectorAll('.mark-sure')).toHaveLength(1)
    expect(terrain.querySelectorAll('.mark-doubtful')).toHaveLength(0)
    expect(terrain.querySelectorAll('.spot')).toHaveLength(2)
  })

  it('is crossed by the cursor, with a second knob on the ridge but none in a gap', () => {
    expect(show().container.querySelectorAll('.knob')).toHaveLength(2)
    cleanup()
    expect(show({ moment: 3 }).container.querySelectorAll('.knob')).toHaveLength(1)
  })
})
