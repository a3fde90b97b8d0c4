// The command line: read plans, reckon, print. Exit 0 when reckoned, 2 when a plan is refused, 64 for wrong usage.

import { readFileSync, writeSync } from 'node:fs'
import { type Plan, parsePlanText, pathText } from '../plan'
import { type Reckoning, reckon } from '../reckon'
import type { System } from '../units'
import { inFull } from './packs'
import { textReport } from './report'

const USAGE = `usage: npm run --silent reckon -- [--json] [--us] plan.json [more.json …]
  --json   print the Reckoning as JSON; with several plans one compact line each
  --us     report in US customary units
  -        read a plan from standard input
`

function main(args: string[]): number {
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
  const results = files.map(reckonFile)
  const refused = results.filter(result => !result.ok)
  if (flags.has('--json')) printJson(results)
  else printReports(results, flags.has('--us') ? 'us' : 'metric')
  return refused.length ? 2 : 0
}

type Result = { ok: true; plan: Plan; reckoning: Reckoning } | { ok: false; problems: string[] }

function reckonFile(file: string): Result {
  let text: string
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8')
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

function printJson(results: Result[]) {
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

function printReports(results: Result[], system: System) {
  for (const result of results) {
    if (result.ok) print(1, `${textReport(result.plan, result.reckoning, system)}\n`)
    else print(2, lines(result.problems))
  }
}

/** One line each, also where a name holds a line break. */
const lines = (texts: string[]) => texts.map(text => `${text.replace(/\s+/g, ' ')}\n`).join('')

/** Writes all of it before going on: a pipe may take less than it is offered. */
function print(descriptor: 1 | 2, text: string) {
  const bytes = Buffer.from(text, 'utf8')
  for (let done = 0; done < bytes.length; ) {
    try {
      done += writeSync(descriptor, bytes, done)
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error
    }
  }
}

process.exitCode = main(process.argv.slice(2))
