// Two plans side by side: what is only in one list, what is otherwise in both, and what each comes to.

import {
  type Draft,
  FIELDS,
  type FieldRow,
  fieldWord,
  type Item,
  itemName,
  type Plan,
  settleAny,
  type Typed,
} from '../plan'
import {
  type Answer,
  type Need,
  planOfOne,
  type Reckoning,
  reckon,
  type SetupReckoning,
  takenAlong,
} from '../reckon'
import type { System } from '../units'
import { type Formats, formatsIn } from './formats'
import { type Missing, missingOf, notInItText } from './missing'
import { valueText } from './value-text'

/** A plan as it is listed, with what stays at home, and what the engine makes of it. */
export interface ComparedPlan {
  plan: Plan
  reckoning: Reckoning
}

/** A field that is otherwise in the two lists; a text is null where the value has no words. */
export interface ChangedField {
  what: string
  before: string | null
  after: string | null
}

/** A figure of both; `after` minus `before` is `change`. */
export interface ComparedFigure {
  what: string
  before: number
  after: number
  change: number
  show: (value: number) => string
}

/** A set-up and its answer in each; null where a plan does not have it. */
export interface ComparedAnswer {
  name: string
  before: Answer | null
  after: Answer | null
}

export interface PlanComparison {
  onlyBefore: string[]
  onlyAfter: string[]
  changed: { name: string; fields: ChangedField[] }[]
  /** None where one of the two takes nothing. */
  figures: ComparedFigure[]
  /** What nobody has said of each, so that its figures are no more than lower bounds. */
  unknown: { before: string[]; after: string[] }
  answers: ComparedAnswer[]
}

export function comparePlansOf(
  before: ComparedPlan,
  after: ComparedPlan,
  system: System = 'metric',
): PlanComparison {
  const pairs = pairsOf(before.plan.gear, after.plan.gear)
  const paired = new Set(pairs.flat())
  const alone = (gear: Item[]) => gear.filter(item => !paired.has(item)).map(itemName)
  const inside = { before: namesIn(before.plan), after: namesIn(after.plan) }
  const missing = { before: missingOf(takenAlong(before.plan)), after: missingOf(takenAlong(after.plan)) }
  return {
    onlyBefore: alone(before.plan.gear),
    onlyAfter: alone(after.plan.gear),
    changed: pairs.flatMap(([one, other]) => {
      const fields = changedFields(
        { ...one, inside: inside.before(one.inside) },
        { ...other, inside: inside.after(other.inside) },
        system,
      )
      return fields.length > 0 ? [{ name: itemName(other), fields }] : []
    }),
    figures:
      missing.before.gear || missing.after.gear
        ? []
        : figuresOf(before.reckoning.need, after.reckoning.need, formatsIn(system)).filter(
            ({ what }) => what !== SAFE || !lacksLitres(missing),
          ),
    unknown: { before: unknownOf(missing.before), after: unknownOf(missing.after) },
    answers: answersOf(before.reckoning.packs, after.reckoning.packs),
  }
}

/** Two trips as they are kept, settled and reckoned: not for every keystroke. Why it cannot be, in words, where one has no figures. */
export function tripsCompared(
  before: KeptTrip,
  after: KeptTrip,
  system: System,
): PlanComparison | { problem: string } {
  const [one, other] = [calculated(before), calculated(after)]
  if ('problem' in one) return one
  return 'problem' in other ? other : comparePlansOf(one, other, system)
}

function calculated({ draft, typed }: KeptTrip): ComparedPlan | { problem: string } {
  const settled = settleAny(draft, typed)
  const plan = planOfOne(settled.plan, settled.shared)
  const reckoned = reckon(plan)
  return reckoned.ok ? { plan, reckoning: reckoned.reckoning } : { problem: reckoned.problem.said }
}

interface KeptTrip {
  draft: Draft
  typed: Typed
}

/** The same things in two lists: those of one id, then those of one name; each but once. */
function pairsOf(before: readonly Item[], after: readonly Item[]): [Item, Item][] {
  const left = new Set(after)
  const found = new Map<Item, Item>()
  const pair = (keyOf: (item: Item) => string) => {
    const byKey = new Map<string, Item[]>()
    for (const item of left) byKey.set(keyOf(item), [...(byKey.get(keyOf(item)) ?? []), item])
    for (const item of before) {
      const other = found.has(item) || !keyOf(item) ? undefined : byKey.get(keyOf(item))?.shift()
      if (!other) continue
      found.set(item, other)
      left.delete(other)
    }
  }
  pair(({ id }) => id)
  pair(({ name }) => name.trim().toLowerCase())
  return before.flatMap((item): [Item, Item][] => (found.has(item) ? [[item, found.get(item)!]] : []))
}

/** A container goes by its name: two lists may know it by different ids. */
const namesIn = ({ gear }: Plan) => {
  const names = new Map(gear.map(item => [item.id, itemName(item)]))
  return (id: string | null) => (id === null ? null : (names.get(id) ?? null))
}

function changedFields(before: Item, after: Item, system: System): ChangedField[] {
  const rows: Readonly<Record<string, FieldRow>> = FIELDS.item
  return Object.entries(rows).flatMap(([field, row]): ChangedField[] => {
    if (field === 'id') return []
    const [from, to] = [storedIn(before, field), storedIn(after, field)]
    if (JSON.stringify(from) === JSON.stringify(to)) return []
    const text = (value: unknown) => valueText(row, value, system)
    return [{ what: row.told ?? fieldWord(field), before: text(from), after: text(to) }]
  })
}

/** A figure that nobody has said is none. */
function storedIn(item: Item, field: string): unknown {
  const { unknownUpTo } = item
  const isUnknown = (field === 'massKg' || field === 'litres') && unknownUpTo && unknownUpTo[field] !== null
  return isUnknown ? null : (item as unknown as Record<string, unknown>)[field]
}

/** No chance is told without litres. */
const SAFE = 'Enough in 9 of 10 cases'

const lacksLitres = ({ before, after }: { before: Missing; after: Missing }): boolean =>
  before.litres.length + after.litres.length > 0

const unknownOf = (missing: Missing): string[] =>
  missing.gear
    ? ['no gear yet']
    : [notInItText(missing, 'litres'), notInItText(missing, 'mass')].filter(Boolean)

function figuresOf(before: Need, after: Need, formats: Formats): ComparedFigure[] {
  const rows: [string, keyof Need, (value: number) => string][] = [
    ['Main body', 'bodyLitres', formats.litres],
    [SAFE, 'bodyLitresSafe', formats.litres],
    ['Heaviest load', 'peakLoadFullWaterKg', formats.kg],
    ['Base weight', 'baseKg', formats.kg],
    ['Worn', 'wornKg', formats.kg],
    ['Pockets', 'outsideLitres', formats.litres],
    ['Most water', 'waterCarryLitres', formats.water],
    ['Short of water', 'waterShortLitres', formats.water],
  ]
  return rows.map(([what, figure, show]) => {
    const [one, other] = [before[figure] as number, after[figure] as number]
    return { what, before: one, after: other, change: other - one, show }
  })
}

function answersOf(before: readonly SetupReckoning[], after: readonly SetupReckoning[]): ComparedAnswer[] {
  const titleOf = ({ name, setup }: SetupReckoning) => `${name}, ${setup}`
  const of = (packs: readonly SetupReckoning[], title: string) =>
    packs.find(each => titleOf(each) === title)?.answer ?? null
  const titles = new Set([...before, ...after].map(titleOf))
  return [...titles].map(name => ({ name, before: of(before, name), after: of(after, name) }))
}
