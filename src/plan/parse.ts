// From bytes or a value of unknown origin to a plan, or to the list of what is wrong with it, field by field.

import type { z } from 'zod/mini'
import { CAPS } from './caps'
import { cleanText, cleanWords, shortName } from './clean-words'
import { completeParty, completePlan, type Known } from './complete'
import { placeInWords } from './field-words'
import type { PlanDocument, WrittenPlan } from './fields'
import { PLAN_FORMAT, PLAN_VERSION } from './format'
import type { Problem } from './problem'
import { checkRules } from './rules'
import { planSchema } from './schema'
import type { PartyPlan, Plan } from './types'

interface Refused {
  ok: false
  problems: [Problem, ...Problem[]]
}

export type Parsed = { ok: true; document: PlanDocument; plan: Plan } | Refused
/** Of one hiker or of several people. */
export type ParsedAny = { ok: true; document: WrittenPlan; plan: Plan | PartyPlan } | Refused

const refuse = (message: string, path: Problem['path'] = [], said = message): Refused => ({
  ok: false,
  problems: [said === message ? { path, message } : { path, message, said }],
})

/** Reads a plan file's text. Never throws: a file that is no plan comes back as problems. */
export const parsePlanText = (text: string): Parsed => ofOneHiker(parseAnyText(text))

/** As {@link parsePlanText}, also of several people. */
export function parseAnyText(text: string): ParsedAny {
  const tooLong = refusedByLength(text.length)
  if (tooLong) return tooLong
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    if (!text.trim()) return refuse('is empty: export it anew')
    // What another encoding leaves when it is read as UTF-8.
    if (text.includes('\0')) return refuse('is not UTF-8 text: save it as UTF-8, or export it anew')
    return refuse(`is not JSON (${cleanText(oneLine(error))}): mend it or export it anew`)
  }
  return withFewProblems(parseForeign(value))
}

/** As {@link parseAnyText}, for what JSON has made of a text of so many characters. */
export const parseAnyValue = (value: unknown, chars: number): ParsedAny =>
  refusedByLength(chars) ?? withFewProblems(parseForeign(value))

// UTF-16 units are at most the UTF-8 bytes, so this cap never refuses a file under it.
const refusedByLength = (chars: number): Refused | null =>
  chars > CAPS.fileBytes
    ? refuse(`is larger than ${CAPS.fileBytes / 1e6} MB: split the plan or remove what it does not need`)
    : null

/** As many as somebody might mend by hand; the rest is only counted. */
const MOST_PROBLEMS = 100

function withFewProblems(parsed: ParsedAny): ParsedAny {
  if (parsed.ok || parsed.problems.length <= MOST_PROBLEMS) return parsed
  const more = parsed.problems.length - MOST_PROBLEMS
  const [first, ...rest] = parsed.problems
  const last = { path: [], message: `has ${more} problems more: mend these ${MOST_PROBLEMS} first` }
  return { ok: false, problems: [first, ...rest.slice(0, MOST_PROBLEMS - 1), last] }
}

/** As {@link parseAny}, for a plan that somebody else may have written: its words are cleaned before they are checked. */
export const parseForeign = (value: unknown): ParsedAny => checkKind(value) ?? parseAny(cleanWords(value))

/** What the parser says of the place, without its verdict on the whole. */
const oneLine = (error: unknown) =>
  String(error instanceof Error ? error.message : error)
    .replace(/\s+/g, ' ')
    .replace(/(, (\.\.\.)?".*"(\.\.\.)?)? is not valid JSON$/, '')
    .slice(0, 200)

/** Checks a value against the plan's schema and rules, and fills in the defaults. */
export const parsePlan = (value: unknown): Parsed => ofOneHiker(parseAny(value))

/** Where only a lone hiker can stand, a plan of several people is refused whole. */
function ofOneHiker(parsed: ParsedAny): Parsed {
  if (!parsed.ok) return parsed
  const { document, plan } = parsed
  if (!isParty(plan) && isOfOne(document)) return { ok: true, document, plan }
  const words = 'a plan of several people where one hiker is asked for: give one carrier'
  return refuse(words, ['people'], 'this is a plan of several people: choose a plan of one hiker')
}

export const isParty = (plan: Plan | PartyPlan): plan is PartyPlan => 'people' in plan

const isOfOne = (document: WrittenPlan): document is WrittenPlan & PlanDocument =>
  document.people === undefined

/** As {@link parsePlan}, also of several people. */
export function parseAny(value: unknown): ParsedAny {
  const wrongKind = checkKind(value)
  if (wrongKind) return wrongKind
  const result = planSchema.safeParse(withoutNulls(value))
  if (!result.success) return refusedFor(result.error.issues.flatMap(problemsOf))
  const broken = checkRules(result.data)
  if (broken.length > 0) return refusedFor(broken)
  return { ok: true, document: result.data, plan: completeAny(result.data) }
}

/** The rules hold that a plan without people has a carrier. */
export const completeAny = (document: WrittenPlan, known?: Known): Plan | PartyPlan =>
  document.people
    ? completeParty({ ...document, people: document.people }, known)
    : completePlan(document as PlanDocument, known)

export function refusedFor([first, ...rest]: Problem[]): Refused {
  return first ? { ok: false, problems: [first, ...rest] } : refuse('is not a plan')
}

/** What keeps a value from being looked at by the schema at all; null if nothing does. */
export function checkKind(value: unknown): Refused | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return refuse('is not a plan: write an object in braces')
  if (depthOf(value, CAPS.depth) > CAPS.depth)
    return refuse(`is nested deeper than ${CAPS.depth} levels: flatten it`)
  // The schema looks at every entry before it counts them.
  const tooMuch = tooMuchIn(value, [])
  if (tooMuch) return { ok: false, problems: [tooMuch] }
  const { format, version } = value as Record<string, unknown>
  if (format !== PLAN_FORMAT)
    return refuse(
      `this is not a Pack Reckoner plan: write "${PLAN_FORMAT}"`,
      ['format'],
      'this is no plan of Pack Reckoner: choose another file',
    )
  if (typeof version === 'number' && version > PLAN_VERSION && Number.isFinite(version))
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

/** The first list or part that is larger than any of a plan; for values whose depth has been checked. */
export function tooMuchIn(value: unknown, path: Problem['path']): Problem | null {
  if (typeof value !== 'object' || value === null) return null
  const isList = Array.isArray(value)
  const [length, most] = isList ? [value.length, CAPS.items] : [Object.keys(value).length, CAPS.fields]
  if (length > most) {
    const what = isList ? 'entries' : 'fields'
    return { path, message: `holds ${length} ${what}, and no plan needs more than ${most}: remove some` }
  }
  for (const [key, child] of Object.entries(value)) {
    const found =
      typeof child === 'object' && child ? tooMuchIn(child, [...path, isList ? Number(key) : key]) : null
    if (found) return found
  }
  return null
}

/** Of an item: these must be written, so that one forgotten is told from one not known. */
const SAID_UNKNOWN = new Set(['massKg', 'litres'])

/** `null` in a file means "not known", the same as leaving the field out but where a plan must say so. */
export function withoutNulls(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNulls)
  if (typeof value !== 'object' || value === null) return value
  // fromEntries defines own properties: a "__proto__" key stays a key, and the schema refuses it by name.
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, child]) =>
      child === undefined || (child === null && !SAID_UNKNOWN.has(key)) ? [] : [[key, withoutNulls(child)]],
    ),
  )
}

/** What the schema found, a problem for each field. */
export function problemsOf(issue: z.core.$ZodIssue): Problem[] {
  const path = issue.path.filter(part => typeof part !== 'symbol')
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map(key => ({
      path: [...path, key],
      message: issue.message,
      said: 'no plan has such a part: remove it',
    }))
  const said = saidOf(issue)
  return [said === null ? { path, message: issue.message } : { path, message: issue.message, said }]
}

/** For people, where the message tells how the value is written in a file; else null. */
function saidOf(issue: z.core.$ZodIssue): string | null {
  // A number, or a word for "worked out".
  if (issue.code === 'invalid_union') return issue.message.replace(/, or ".*"$/, '')
  // A part that is not there at all.
  const isMissing = issue.code === 'custom' && issue.path.join() === 'carrier'
  const isWritten = isMissing || (issue.code === 'invalid_type' && issue.expected !== 'number')
  return isWritten || issue.code === 'invalid_value' ? 'it cannot be read: choose it anew' : null
}

/** A problem as a sentence for people, who see no file: its place, what is wrong and how to mend it, all in words. */
export const problemInWords = ({ path, message, said = message }: Problem): string =>
  `${placeInWords(path)}: ${said}`

/** A path as the command line writes it: `gear[3].massKg`. */
export function pathText(path: Problem['path']): string {
  if (path.length === 0) return 'plan'
  return path
    .map((part, i) => (typeof part === 'number' ? `[${part}]` : `${i ? '.' : ''}${shortName(part)}`))
    .join('')
}
