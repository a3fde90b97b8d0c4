// What is measured of the engine, the floors and the spreadsheets. Runs in Node and in a browser alike.

import { reckon } from '../../src/reckon'
import { type Figures, figuresOf, largestDifference, reckoned, toldOf } from './figures'
import { changeMass, groupsOf, walkGroups } from './floors'
import { type Layout, type Sheet, sheetOf } from './sheets'
import { planOf, type Size, withMass } from './sizes'
import { growthExponent, type Timing, timed, timedOnce } from './timing'

interface Case {
  name: string
  size: Size
  layouts: Layout[]
}

const CASES: Case[] = [
  {
    name: '40 items × 10 stops × 10 packs',
    size: { items: 40, stops: 10, nights: 4, packs: 10 },
    layouts: ['grouped'],
  },
  {
    name: '500 items × 60 days × 100 packs',
    size: { items: 500, stops: 61, nights: 59, packs: 100 },
    layouts: ['grouped', 'SUMIF', 'SUMPRODUCT', 'grid'],
  },
  {
    name: '10,000 items × 10 stops × 10 packs',
    size: { items: 10_000, stops: 10, nights: 4, packs: 10 },
    layouts: ['grouped'],
  },
  {
    name: '1,000 items, 300 containers × 60 days × 100 packs',
    size: { items: 1000, stops: 61, nights: 59, packs: 100, containers: 300 },
    layouts: ['grouped'],
  },
  {
    name: '40 items × 30 days × 10 packs, ration by energy',
    size: { items: 40, stops: 31, nights: 29, packs: 10, ration: 'energy' },
    layouts: [],
  },
]

export interface Measured {
  plan: string
  by: string
  /** From the input to all figures. */
  whole: Timing
  /** From another mass of one item to all figures. */
  edit: Timing
  /** Of its figures after the edits from the engine's, as a share; null for the engine itself. */
  difference: number | null
}

const BUDGET_MS = 600
const ROUNDS = 6

/** `most`: so many layouts of the spreadsheet for each plan, the fastest first. */
export function measureCases(most: number): Measured[] {
  return CASES.flatMap(({ name, size, layouts }) => {
    const plan = planOf(size)
    const item = plan.gear.length - 2
    const last = withMass(plan, item, 0.08)
    const expected = figuresOf(reckoned(last))
    const told = toldOf(plan, reckoned(plan))
    const row = (by: string, whole: Timing, edit: Timing, got: Figures | null): Measured => ({
      plan: name,
      by,
      whole,
      edit,
      difference: got && largestDifference(got, expected),
    })
    const engine = row(
      'engine',
      timed(() => reckon(plan), BUDGET_MS),
      editing(massKg => reckon(withMass(plan, item, massKg))),
      null,
    )
    if (layouts.length === 0) return [engine]

    const changed = told.rows[item]!
    const walkAll = () => walkGroups(groupsOf(told), told)
    const overItems = row(
      'floor over items',
      timed(walkAll, BUDGET_MS),
      editing(massKg => {
        changed.massKg = massKg
        walkAll()
      }),
      walkAll(),
    )
    const groups = groupsOf(told)
    const walk = () => walkGroups(groups, told)
    const overGroups = row(
      'floor over groups',
      timed(walk, BUDGET_MS),
      editing(massKg => {
        changeMass(groups, changed, massKg)
        walk()
      }),
      walk(),
    )
    const sheets = layouts.slice(0, most).map(layout => {
      // Built once: some layouts take many seconds.
      let sheet!: Sheet
      const whole = timedOnce(() => {
        sheet = sheetOf(told, layout)
      })
      const edit = editing(massKg => sheet.setMass(item, massKg))
      return row(`sheet, ${layout}`, whole, edit, sheet.figures())
    })
    return [engine, overItems, overGroups, ...sheets]
  })
}

/** Edits to and fro, ending with a mass of 0.08 kg. */
function editing(edit: (massKg: number) => void): Timing {
  let step = 0
  const timing = timed(() => edit(step++ % 2 ? 0.06 : 0.07), BUDGET_MS)
  edit(0.08)
  return timing
}

export interface Grown {
  along: string
  sizes: number[]
  /** Fastest run at each size, ms. */
  times: number[]
  exponent: number
}

const twice = (first: number, times: number) => Array.from({ length: times }, (_, i) => first * 2 ** i)

export function measureGrowth(): Grown[] {
  const few = { items: 40, stops: 10, nights: 4, packs: 10 }
  const along = (name: string, sizes: number[], size: (n: number) => Size): Grown => {
    const plans = sizes.map(n => planOf(size(n)))
    const times = sizes.map(() => Number.POSITIVE_INFINITY)
    // Round by round, so that what else the machine does meets all sizes alike.
    for (let round = 0; round < ROUNDS; round++)
      plans.forEach((plan, i) => {
        times[i] = Math.min(times[i]!, timed(() => reckon(plan), BUDGET_MS / ROUNDS).least)
      })
    return { along: name, sizes, times, exponent: growthExponent(sizes, times) }
  }
  return [
    along('items', twice(1000, 5), items => ({ ...few, items })),
    along('stops', twice(25, 5), stops => ({ ...few, stops, nights: Math.min(stops - 2, 390) })),
    along('set-ups', twice(60, 5), packs => ({ ...few, packs })),
    along('containers', twice(150, 5), containers => ({ ...few, items: 5000, containers })),
    along('containers and stops at once', twice(25, 5), n => ({
      ...few,
      items: 1000,
      containers: n,
      stops: n,
      nights: Math.min(n - 2, 390),
    })),
  ]
}
