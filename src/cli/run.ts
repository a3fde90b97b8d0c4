// What the command line does, with the streams of the shell given from outside.

import { readFileSync } from 'node:fs'
import { type Plan, parsePlanText, pathText } from '../plan'
import { type Reckoning, reckon } from '../reckon'
import type { System } from '../units'
import { inFull } from './packs'
import { textReport } from './report'

/** Writes to standard output (1) or standard error (2). */
type Print = (descriptor: 1 | 2, text: string) => void

export interface Streams {
  /** All of standard input. */
  input: () => string
  print: Print
}

const USAGE = `usage: npm run --silent reckon -- [--json] [--us] plan.json [more.json …]
  --json   print the Reckoning as JSON; with several plans one compact line each
  --us     report in US customary units
  -        read a plan from standard input
`

/**
 * Reckons the plans that the arguments name and prints what comes of them. Returns the exit code: 0 when reckoned, 2 when
 * a plan is refused, 64 for wrong usage.
 */
export function run(args: string[], { input, print }: Streams): number {
  const flags = new Set(args.filter(arg => arg.startsWith('--')))
  const files = args.filter(arg => !arg.startsWith('--'))
  if (flags.has('--help')) {
    print(1, USAGE)
    return 0
  }
  const unknown = [...flags].find(flag => flag !== '--json' && flag !== '--us')
  if (unknown || files.length === 0) {
    print(2, unknown ? `unknown option ${unknown}\n${USAGE}` : USAGE)
    return 64
  }
  const results = files.map(file => reckonFile(file, input))
  const refused = results.filter(result => !result.ok)
  if (flags.has('--json')) printJson(results, print)
  else printReports(results, flags.has('--us') ? 'us' : 'metric', print)
  return refused.length ? 2 : 0
}

type Result = { ok: true; plan: Plan; reckoning: Reckoning } | { ok: false; problems: string[] }

function reckonFile(file: string, input: Streams['input']): Result {
  let text: string
  try {
    text = file === '-' ? input() : readFileSync(file, 'utf8')
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return { ok: false, problems: [`plan: cannot be read (${why}): check the file's name`] }
  }
  const parsed = parsePlanText(text)
  if (!parsed.ok)
    return {
      ok: false,
      problems: parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`),
    }
  const reckoned = reckon(parsed.plan)
  if (reckoned.ok) return { ok: true, plan: parsed.plan, reckoning: reckoned.reckoning }
  const { path, message } = reckoned.problem
  return { ok: false, problems: [`${pathText(path)}: ${message}`] }
}

function printJson(results: Result[], print: Print) {
  const [only] = results
  if (results.length === 1 && only) {
    if (only.ok) print(1, `${JSON.stringify(inFull(only.plan, only.reckoning), null, 1)}\n`)
    else print(2, lines(only.problems))
    return
  }
  for (const result of results) {
    if (!result.ok) print(2, lines(result.problems))
    print(
      1,
      `${JSON.stringify(result.ok ? inFull(result.plan, result.reckoning) : { refused: result.problems })}\n`,
    )
  }
}

function printReports(results: Result[], system: System, print: Print) {
  for (const result of results) {
    if (result.ok) print(1, `${textReport(result.plan, result.reckoning, system)}\n`)
    else print(2, lines(result.problems))
  }
}

/** One line each, also where a name holds a line break. */
const lines = (texts: string[]) => texts.map(text => `${text.replace(/\s+/g, ' ')}\n`).join('')
