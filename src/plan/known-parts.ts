// A document checked as `parsePlan` does it, but each item and pack only once: of thousands of them, one keystroke changes
// one.

import type { z } from 'zod/mini'
import { CAPS } from './caps'
import { completeItem, completePack } from './complete'
import {
  checkKind,
  completeAny,
  type ParsedAny,
  parseAny,
  problemsOf,
  refusedFor,
  tooMuchIn,
  withoutNulls,
} from './parse'
import type { Problem } from './problem'
import { checkRules } from './rules'
import { itemSchema, packSchema, planSchema } from './schema'

type Checked<D, C> =
  | { ok: true; document: D; complete: C }
  | { ok: false; problems: Problem[]; isTooMuch: boolean }

/** What is found of a part of one kind, looked for once; the parts in question are never changed in place. */
function checker<D, C>(schema: z.ZodMiniType<D>, complete: (document: D) => C) {
  const checked = new WeakMap<object, Checked<D, C>>()
  return (part: object): Checked<D, C> => {
    const known = checked.get(part)
    if (known) return known
    const result = schema.safeParse(withoutNulls(part))
    const found: Checked<D, C> = result.success
      ? { ok: true, document: result.data, complete: complete(result.data) }
      : {
          ok: false,
          problems: result.error.issues.flatMap(problemsOf),
          isTooMuch: tooMuchIn(part, []) !== null,
        }
    checked.set(part, found)
    return found
  }
}

const checkItem = checker(itemSchema, completeItem)
const checkPack = checker(packSchema, completePack)

/** The order in which the schema looks at the parts of a plan; fields that it does not know come last. */
const ORDER = Object.keys(planSchema.shape)
const rank = ({ path: [part] }: Problem) => {
  const at = ORDER.indexOf(String(part))
  return at < 0 ? ORDER.length : at
}

/**
 * The same as `parseAny(document)`, for a document whose depth is within the caps and whose items and packs are objects
 * that nobody changes once they are in one.
 */
export function parseWithKnown(document: { gear: readonly object[]; packs: readonly object[] }): ParsedAny {
  const gear = document.gear.map(checkItem)
  const packs = document.packs.map(checkPack)
  const isTooLong = gear.length > CAPS.items || packs.length > CAPS.packs
  // What is over a cap ends the check before the schema is asked, in an order of its own.
  if (isTooLong || [...gear, ...packs].some(each => !each.ok && each.isTooMuch)) return parseAny(document)
  const others = { ...document, gear: [], packs: [] }
  const wrongKind = checkKind(others)
  if (wrongKind) return wrongKind
  const rest = planSchema.safeParse(withoutNulls(others))
  const problems = rest.success ? [] : rest.error.issues.flatMap(problemsOf)
  const items = sound(gear, 'gear', problems)
  const sacks = sound(packs, 'packs', problems)
  if (!rest.success || problems.length > 0) return refusedFor(problems.sort((a, b) => rank(a) - rank(b)))
  const whole = { ...rest.data, gear: items.documents, packs: sacks.documents }
  const broken = checkRules(whole)
  if (broken.length > 0) return refusedFor(broken)
  const plan = completeAny(whole, { gear: items.complete, packs: sacks.complete })
  return { ok: true, document: whole, plan }
}

/** The parts that are right; what is wrong with the others goes to the problems, each at its place. */
function sound<D, C>(parts: readonly Checked<D, C>[], list: 'gear' | 'packs', problems: Problem[]) {
  const documents: D[] = []
  const complete: C[] = []
  parts.forEach((part, i) => {
    if (part.ok) {
      documents.push(part.document)
      complete.push(part.complete)
    } else problems.push(...part.problems.map(problem => ({ ...problem, path: [list, i, ...problem.path] })))
  })
  return { documents, complete }
}
