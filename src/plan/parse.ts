// From bytes or a value of unknown origin to a plan, or to the list of what is wrong with it, field by field.

import type { z } from 'zod/mini'
import { completePlan } from './complete'
import { CAPS } from './limits'
import { checkRules, type Problem } from './rules'
import { PLAN_FORMAT, PLAN_VERSION, type PlanDocument, planSchema } from './schema'
import type { Plan } from './types'

export type Parsed =
  | { ok: true; document: PlanDocument; plan: Plan }
  | { ok: false; problems: [Problem, ...Problem[]] }

const refuse = (message: string, path: Problem['path'] = []): Parsed => ({
  ok: false,
  problems: [{ path, message }],
})

/** Reads a plan file's text. Never throws: a file that is no plan comes back as problems. */
export function parsePlanText(text: string): Parsed {
  // UTF-16 units are at most the UTF-8 bytes, so this cap never refuses a file under it.
  if (text.length > CAPS.fileBytes)
    return refuse(`is larger than ${CAPS.fileBytes / 1e6} MB: split the plan or remove what it does not need`)
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse(`is not JSON (${oneLine(error)}): mend it or export it anew`)
  }
  return parsePlan(value)
}

/** What the parser says of the place, without its verdict on the whole. */
const oneLine = (error: unknown) =>
  String(error instanceof Error ? error.message : error)
    .replace(/\s+/g, ' ')
    .replace(/(, ".*")? is not valid JSON$/, '')

/** Checks a value against the plan's schema and rules, and fills in the defaults. */
export function parsePlan(value: unknown): Parsed {
  const wrongKind = checkKind(value)
  if (wrongKind) return wrongKind
  const result = planSchema.safeParse(withoutNulls(value))
  if (!result.success) {
    const [first, ...rest] = result.error.issues.flatMap(problemsOf)
    return first ? { ok: false, problems: [first, ...rest] } : refuse('is not a plan')
  }
  const [first, ...rest] = checkRules(result.data)
  if (first) return { ok: false, problems: [first, ...rest] }
  return { ok: true, document: result.data, plan: completePlan(result.data) }
}

function checkKind(value: unknown): Parsed | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return refuse('is not a plan: write an object in braces')
  if (depthOf(value, CAPS.depth) > CAPS.depth)
    return refuse(`is nested deeper than ${CAPS.depth} levels: flatten it`)
  const { format, version } = value as Record<string, unknown>
  if (format !== PLAN_FORMAT)
    return refuse(`this is not a Pack Reckoner plan: write "${PLAN_FORMAT}"`, ['format'])
  if (typeof version === 'number' && version > PLAN_VERSION)
    return refuse(
      `${version} is newer than this program reads (${PLAN_VERSION}): update Pack Reckoner, or export the plan as version ${PLAN_VERSION}`,
      ['version'],
    )
  return null
}

/** How deep a value nests, counted only as far as `cap` + 1, so that hostile input costs nothing. */
function depthOf(value: unknown, cap: number): number {
  if (typeof value !== 'object' || value === null) return 0
  if (cap === 0) return 1
  let deepest = 0
  for (const child of Object.values(value)) {
    deepest = Math.max(deepest, depthOf(child, cap - 1))
    if (deepest >= cap) break
  }
  return deepest + 1
}

/** `null` in a file means "not known", the same as leaving the field out. */
function withoutNulls(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNulls)
  if (typeof value !== 'object' || value === null) return value
  // fromEntries defines own properties: a "__proto__" key stays a key, and the schema refuses it by name.
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, child]) =>
      child === null || child === undefined ? [] : [[key, withoutNulls(child)]],
    ),
  )
}

function problemsOf(issue: z.core.$ZodIssue): Problem[] {
  const path = issue.path.filter(part => typeof part !== 'symbol')
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map(key => ({ path: [...path, key], message: issue.message }))
  return [{ path, message: issue.message }]
}

/** A path as the command line and the messages write it: `gear[3].massKg`. */
export function pathText(path: Problem['path']): string {
  if (path.length === 0) return 'plan'
  return path.map((part, i) => (typeof part === 'number' ? `[${part}]` : i ? `.${part}` : part)).join('')
}
