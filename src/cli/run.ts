// What the command line does, with the streams of the shell given from outside.

import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { decodeTable } from '../files/csv'
import { isParty, type PartyPlan, type Plan, parseAnyText, pathText } from '../plan'
import { type Measure, type PartyReckoning, type Reckoning, reckon, reckonParty } from '../reckon'
import type { System } from '../units'
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

const USAGE = `usage: npm run --silent reckon -- [--json] [--us] plan.json [more.json …]
       npm run --silent reckon -- --packs table.csv [plan.json] [--by FIGURE] [--down] [--measure PARTS] [--strict]
  --json     print the Reckoning as JSON; with several plans one compact line each
  --us       report in US customary units
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
  const asked = readArgs(args)
  const misused = (why: string) => {
    print(2, why ? `${why}\n${USAGE}` : USAGE)
    return 64
  }
  if ('problem' in asked) return misused(asked.problem)
  const { values, positionals: files } = asked
  if (values.help) {
    print(1, USAGE)
    return 0
  }
  const system = values.us ? 'us' : 'metric'
  if (values.packs !== undefined) {
    const how = howOf(values, files)
    if ('problem' in how) return misused(how.problem)
    const about = { table: values.packs, plan: files[0], system, json: values.json === true } as const
    return judgePacks({ ...about, ...how }, { input, print })
  }
  const lost = (['by', 'down', 'measure', 'strict'] as const).find(option => values[option] !== undefined)
  if (lost) return misused(`--${lost} goes with --packs`)
  if (files.length === 0) return misused('')
  const results = files.map(file => reckonFile(file, input))
  const refused = results.filter(result => !result.ok)
  if (values.json) printJson(results, print)
  else printReports(results, system, print)
  return refused.length ? 2 : 0
}

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
  const read = packEntries(text.text, plan?.plan ?? null, measure)
  print(2, lines([...read.doubts, ...read.problems]))
  if (read.entries.length === 0 && read.problems.length > 0) return 2
  const sorting = { by, down }
  print(1, json ? `${JSON.stringify(read.entries, null, 1)}\n` : packsReport(read.entries, sorting, system))
  return strict && read.problems.length > 0 ? 2 : 0
}

type Refused = { ok: false; problems: string[] }
type Result =
  | { ok: true; plan: Plan; reckoning: Reckoning }
  | { ok: true; plan: PartyPlan; party: PartyReckoning }
  | Refused

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

function reckonFile(file: string, input: Streams['input']): Result {
  const read = planIn(file, input)
  if (!read.ok) return read
  const { plan } = read
  if (isParty(plan)) {
    const reckoned = reckonParty(plan)
    return reckoned.ok ? { ok: true, plan, party: reckoned.party } : refusal(reckoned.problem)
  }
  const reckoned = reckon(plan)
  return reckoned.ok ? { ok: true, plan, reckoning: reckoned.reckoning } : refusal(reckoned.problem)
}

const refusal = ({ path, message }: { path: string[]; message: string }): Refused => ({
  ok: false,
  problems: [`${pathText(path)}: ${message}`],
})

/** Of a party `need` and `packs` are each person's. */
const asJson = (result: Exclude<Result, Refused>) =>
  'party' in result ? { need: null, packs: null, ...result.party } : inFull(result.plan, result.reckoning)

const asReport = (result: Exclude<Result, Refused>, system: System) =>
  'party' in result
    ? partyReport(result.plan, result.party, system)
    : textReport(result.plan, result.reckoning, system)

function printJson(results: Result[], print: Print) {
  const [only] = results
  if (results.length === 1 && only) {
    if (only.ok) print(1, `${JSON.stringify(asJson(only), null, 1)}\n`)
    else print(2, lines(only.problems))
    return
  }
  for (const result of results) {
    if (!result.ok) print(2, lines(result.problems))
    print(1, `${JSON.stringify(result.ok ? asJson(result) : { refused: result.problems })}\n`)
  }
}

function printReports(results: Result[], system: System, print: Print) {
  for (const result of results) {
    if (result.ok) print(1, `${asReport(result, system)}\n`)
    else print(2, lines(result.problems))
  }
}

/** One line each, also where a name holds a line break. */
const lines = (texts: string[]) => texts.map(text => `${text.replace(/\s+/g, ' ')}\n`).join('')
