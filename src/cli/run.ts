// What the command line does, with the streams of the shell given from outside.

import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { decodeTable } from '../files/csv'
import { isParty, type PartyPlan, type Plan, parseAnyText, pathText } from '../plan'
import {
  type Measure,
  type PartyReckoning,
  personAlone,
  type Reckoning,
  reckon,
  reckonParty,
  takenAlong,
} from '../reckon'
import type { System } from '../units'
import { type Asked, askedReport, askedWith, refusedFor, stopAsked } from './asked'
import { comparePlans } from './compare'
import { readMeasure } from './measure'
import { inFull } from './packs'
import { FIGURES, type Figure, OF_A_TRIP, packEntries, packsReport } from './packs-apart'
import { partyReport } from './party-report'
import { textReport } from './report'

/** Writes to standard output (1) or standard error (2). */
type Print = (descriptor: 1 | 2, text: string) => void

export interface Streams {
  /** All of standard input. */
  input: () => string
  print: Print
}

const USAGE = `usage: npm run --silent reckon -- [--json] [--us] [--effects] [--from K] plan.json [more.json …]
       npm run --silent reckon -- [--json] [--us] --compare a.json b.json
       npm run --silent reckon -- --packs table.csv [plan.json] [--by FIGURE] [--down] [--measure PARTS] [--strict]
  --json     print the Reckoning as JSON; with several plans one compact line each
  --us       report in US customary units
  --effects  what each thing costs: the need without it, less the need with it
  --from     what should be left on leaving stop K; the start is 0
  --compare  what differs between two plans
  --packs    judge the packs of a table (CSV), by the plan or apart from any
  --by       sort by a figure: ${FIGURES.slice(0, 9).join(', ')},
             ${FIGURES.slice(9).join(', ')}
  --down     the largest first
  --measure  a figure of your own: massG=1,price=1,bodyLitres=-1 is mass times price, for each litre;
             powers from -2 to 2 of massG, bodyLitres, totalLitres, ratedKg, denier, price
  --strict   end with 2 where a row could not be read
  -          read a plan, or the table, from standard input
`

const OPTIONS = {
  help: { type: 'boolean' },
  json: { type: 'boolean' },
  us: { type: 'boolean' },
  effects: { type: 'boolean' },
  from: { type: 'string' },
  compare: { type: 'boolean' },
  packs: { type: 'string' },
  by: { type: 'string' },
  down: { type: 'boolean' },
  measure: { type: 'string' },
  strict: { type: 'boolean' },
} as const

/**
 * Reckons the plans that the arguments name, or the packs of a table, and prints what comes of them. Returns the exit
 * code: 0 when reckoned, 2 when a plan or a table is refused, 64 for wrong usage.
 */
export function run(args: string[], { input, print }: Streams): number {
  const given = readArgs(args)
  const misused = (why: string) => {
    print(2, why ? `${why}\n${USAGE}` : USAGE)
    return 64
  }
  if ('problem' in given) return misused(given.problem)
  const { values, positionals: files } = given
  if (values.help) {
    print(1, USAGE)
    return 0
  }
  const system = values.us ? 'us' : 'metric'
  const from = stopAsked(values.from)
  if (from === 'wrong')
    return misused(`--from: "${values.from}" is no stop on the way: count from the start, which is 0`)
  const asked: Asked = { effects: values.effects === true, from }
  const plansOnly = (['effects', 'from', 'compare'] as const).find(option => values[option] !== undefined)
  if (values.packs !== undefined) {
    if (plansOnly) return misused(`--${plansOnly} does not go with --packs`)
    const how = howOf(values, files)
    if ('problem' in how) return misused(how.problem)
    const about = { table: values.packs, plan: files[0], system, json: values.json === true } as const
    return judgePacks({ ...about, ...how }, { input, print })
  }
  const lost = (['by', 'down', 'measure', 'strict'] as const).find(option => values[option] !== undefined)
  if (lost) return misused(`--${lost} goes with --packs`)
  if (files.length === 0) return misused('')
  if (values.compare) {
    if (plansOnly !== 'compare') return misused(`--${plansOnly} does not go with --compare`)
    if (files.length !== 2) return misused('--compare takes two plans')
  }
  const results = files.map(file => reckonFile(file, input, asked))
  if (values.compare)
    return printComparison(results.map(ofOne), { system, json: values.json === true }, print)
  if (values.json) printJson(results, asked, print)
  else printReports(results, { system, asked }, print)
  return codeOf(results)
}

const codeOf = (results: readonly { ok: boolean }[]) => (results.every(({ ok }) => ok) ? 0 : 2)

function readArgs(args: string[]) {
  // The parser's own messages are for programmers.
  const unknown = args.find(arg => /^--/.test(arg) && !(arg.slice(2).split('=')[0]! in OPTIONS))
  if (unknown) return { problem: `unknown option ${unknown}` }
  try {
    return parseArgs({ args, options: OPTIONS, allowPositionals: true })
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) }
  }
}

type Values = Exclude<ReturnType<typeof readArgs>, { problem: string }>['values']

interface How {
  measure: Measure | null
  by: Figure | null
  down: boolean
  strict: boolean
}

function howOf(
  { measure: text, by, down, strict, packs }: Values,
  files: string[],
): How | { problem: string } {
  if (files.length > 1) return { problem: '--packs takes one plan' }
  if (packs === '-' && files[0] === '-')
    return { problem: 'standard input is the table or the plan, not both' }
  const measure = text === undefined ? null : readMeasure(text)
  if (measure && 'problem' in measure) return { problem: `--measure: ${measure.problem}` }
  const figure = by ?? (measure ? 'measure' : null)
  if (figure !== null && !isFigure(figure))
    return { problem: `--by: "${figure}" is no figure: use ${FIGURES.join(', ')}` }
  if (figure === 'measure' && !measure) return { problem: '--by measure needs --measure' }
  if (files.length === 0 && (OF_A_TRIP as readonly (Figure | null)[]).includes(figure))
    return { problem: `--by ${figure} needs a plan` }
  return { measure, by: figure, down: down === true, strict: strict === true }
}

const isFigure = (word: string): word is Figure => (FIGURES as readonly string[]).includes(word)

interface Judging extends How {
  table: string
  plan: string | undefined
  system: System
  json: boolean
}

function judgePacks(
  { table, plan: planFile, system, json, measure, by, down, strict }: Judging,
  { input, print }: Streams,
): number {
  const text = readText(table, input, bytes => decodeTable(new Uint8Array(bytes)).text)
  const plan = planFile === undefined ? null : onePlanIn(planFile, input)
  const problems = [...(text.ok ? [] : [`table: ${text.why}`]), ...(plan && !plan.ok ? plan.problems : [])]
  if (!text.ok || (plan && !plan.ok)) {
    print(2, lines(problems))
    return 2
  }
  const read = packEntries(text.text, plan && takenAlong(plan.plan), measure)
  print(2, lines([...read.doubts, ...read.problems]))
  if (read.entries.length === 0 && read.problems.length > 0) return 2
  const sorting = { by, down }
  print(1, json ? `${JSON.stringify(read.entries, null, 1)}\n` : packsReport(read.entries, sorting, system))
  return strict && read.problems.length > 0 ? 2 : 0
}

type Refused = { ok: false; problems: string[] }
/** `listed`: with what stays at home; `plan`: what is taken along. */
type OfOne = { ok: true; listed: Plan; plan: Plan; reckoning: Reckoning }
type OfParty = { ok: true; plan: PartyPlan; party: PartyReckoning }
type Result = OfOne | OfParty | Refused

function readText(
  file: string,
  input: Streams['input'],
  decode = (bytes: Buffer) => bytes.toString('utf8'),
): { ok: true; text: string } | { ok: false; why: string } {
  try {
    return { ok: true, text: file === '-' ? input() : decode(readFileSync(file)) }
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return { ok: false, why: `cannot be read (${why}): check the file's name` }
  }
}

function planIn(file: string, input: Streams['input']): { ok: true; plan: Plan | PartyPlan } | Refused {
  const read = readText(file, input)
  if (!read.ok) return { ok: false, problems: [`plan: ${read.why}`] }
  const parsed = parseAnyText(read.text)
  if (parsed.ok) return { ok: true, plan: parsed.plan }
  return { ok: false, problems: parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`) }
}

/** Packs apart are judged by one hiker. */
function onePlanIn(file: string, input: Streams['input']): { ok: true; plan: Plan } | Refused {
  const read = planIn(file, input)
  if (!read.ok) return read
  const { plan } = read
  if (!isParty(plan)) return { ok: true, plan }
  const why = 'people: a table of packs is judged by the load of one: give a plan with carrier'
  return { ok: false, problems: [why] }
}

function reckonFile(file: string, input: Streams['input'], asked: Asked): Result {
  const read = planIn(file, input)
  if (!read.ok) return read
  const { plan } = read
  const problems = refusedFor(plan, asked)
  if (problems.length > 0) return { ok: false, problems }
  if (isParty(plan)) {
    const reckoned = reckonParty(plan)
    return reckoned.ok
      ? { ok: true, plan: takenAlong(plan), party: reckoned.party }
      : refusal(reckoned.problem)
  }
  const reckoned = reckon(plan)
  return reckoned.ok
    ? { ok: true, listed: plan, plan: takenAlong(plan), reckoning: reckoned.reckoning }
    : refusal(reckoned.problem)
}

const refusal = ({ path, message }: { path: string[]; message: string }): Refused => ({
  ok: false,
  problems: [`${pathText(path)}: ${message}`],
})

/** Of a party `need` and `packs` are each person's, and so is what is asked beyond. */
function asJson(result: OfOne | OfParty, asked: Asked) {
  if (!('party' in result)) return { ...inFull(result.plan, result.reckoning), ...askedWith(result, asked) }
  const { plan, party } = result
  const people = party.people.map((person, who) => {
    const { plan: listed, reckoning } = personAlone(plan, party, who)
    return { ...person, ...askedWith({ listed, reckoning }, asked) }
  })
  return { need: null, packs: null, ...party, people }
}

function asReport(result: OfOne | OfParty, how: { system: System; asked: Asked }): string {
  if ('party' in result) return partyReport(result.plan, result.party, how.system)
  return textReport(result.plan, result.reckoning, how.system) + askedReport(result, how)
}

function printJson(results: Result[], asked: Asked, print: Print) {
  const [only] = results
  if (results.length === 1 && only) {
    if (only.ok) print(1, `${JSON.stringify(asJson(only, asked), null, 1)}\n`)
    else print(2, lines(only.problems))
    return
  }
  for (const result of results) {
    if (!result.ok) print(2, lines(result.problems))
    print(1, `${JSON.stringify(result.ok ? asJson(result, asked) : { refused: result.problems })}\n`)
  }
}

function printReports(results: Result[], how: { system: System; asked: Asked }, print: Print) {
  for (const result of results) {
    if (result.ok) print(1, `${asReport(result, how)}\n`)
    else print(2, lines(result.problems))
  }
}

/** Two parties share out anew: nothing of one need be in the other. */
const ofOne = (result: Result): OfOne | Refused =>
  'party' in result
    ? { ok: false, problems: ['people: plans of one hiker are compared: give plans with carrier'] }
    : result

function printComparison(
  results: (OfOne | Refused)[],
  how: { system: System; json: boolean },
  print: Print,
): number {
  print(2, lines(results.flatMap(result => (result.ok ? [] : result.problems))))
  const [before, after] = results
  if (before?.ok && after?.ok) print(1, comparePlans(before, after, how))
  return codeOf(results)
}

/** One line each, also where a name holds a line break. */
const lines = (texts: string[]) => texts.map(text => `${text.replace(/\s+/g, ' ')}\n`).join('')
