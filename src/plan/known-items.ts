// A document checked as `parsePlan` does it, but each item only once: of thousands of items, one keystroke changes one.

import { CAPS } from './caps'
import { completeItem } from './complete'
import type { ItemDocument } from './fields'
import {
  checkKind,
  completeAny,
  ofOneHiker,
  type Parsed,
  parsePlan,
  problemsOf,
  refusedFor,
  tooMuchIn,
  withoutNulls,
} from './parse'
import type { Problem } from './problem'
import { checkRules } from './rules'
import { itemSchema, planSchema } from './schema'
import type { Item } from './types'

type Checked =
  | { ok: true; item: ItemDocument; complete: Item }
  | { ok: false; problems: Problem[]; isTooMuch: boolean }

/** What was found of each item; the items in question are never changed in place. */
const checked = new WeakMap<object, Checked>()

/** What is found of an item, looked for once. */
function checkItem(item: object): Checked {
  const known = checked.get(item)
  if (known) return known
  const result = itemSchema.safeParse(withoutNulls(item))
  const found: Checked = result.success
    ? { ok: true, item: result.data, complete: completeItem(result.data) }
    : {
        ok: false,
        problems: result.error.issues.flatMap(problemsOf),
        isTooMuch: tooMuchIn(item, []) !== null,
      }
  checked.set(item, found)
  return found
}

/** The order in which the schema looks at the parts of a plan; fields that it does not know come last. */
const ORDER = Object.keys(planSchema.shape)
const rank = ({ path: [part] }: Problem) => {
  const at = ORDER.indexOf(String(part))
  return at < 0 ? ORDER.length : at
}

/**
 * The same as `parsePlan(document)`, for a document whose depth is within the caps and whose items are objects that
 * nobody changes once they are in one.
 */
export function parseWithKnown(document: { gear: readonly object[] }): Parsed {
  const gear = document.gear.map(checkItem)
  // What is over a cap ends the check before the schema is asked, in an order of its own.
  if (gear.length > CAPS.items || gear.some(each => !each.ok && each.isTooMuch)) return parsePlan(document)
  const others = { ...document, gear: [] }
  const wrongKind = checkKind(others)
  if (wrongKind) return wrongKind
  const rest = planSchema.safeParse(withoutNulls(others))
  const problems = rest.success ? [] : rest.error.issues.flatMap(problemsOf)
  const items: ItemDocument[] = []
  const complete: Item[] = []
  gear.forEach((each, i) => {
    if (each.ok) {
      items.push(each.item)
      complete.push(each.complete)
    } else
      problems.push(...each.problems.map(problem => ({ ...problem, path: ['gear', i, ...problem.path] })))
  })
  if (!rest.success || problems.length > 0) return refusedFor(problems.sort((a, b) => rank(a) - rank(b)))
  const whole = { ...rest.data, gear: items }
  const broken = checkRules(whole)
  if (broken.length > 0) return refusedFor(broken)
  return ofOneHiker({ ok: true, document: whole, plan: completeAny(whole, complete) })
}
