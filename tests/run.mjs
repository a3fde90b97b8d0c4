// The whole check of the repository, in stages; stops at the first that fails, once what runs beside it has ended.
//   npm test            everything
//   npm test -- unit    one stage, or several: chromium types lint unused unit build budgets browser faults
import { spawn } from 'node:child_process'
import { mkdir, readFile, rm } from 'node:fs/promises'
import { delimiter, join } from 'node:path'

const root = join(import.meta.dirname, '..')
const reports = join(root, '.cache', 'reports')

const vitest = (name, ...projects) =>
  [
    ['vitest', 'run', ...projects.flatMap(project => ['--project', project])],
    ['--reporter=default', '--reporter=json', `--outputFile.json=${join(reports, `${name}.json`)}`],
  ].flat()

const unit = {
  name: 'unit',
  what: 'unit and component tests',
  commands: [vitest('unit', 'unit', 'store', 'app')],
  counts: true,
}
const statics = [
  {
    name: 'chromium',
    what: 'a browser for the journeys',
    commands: [['node', 'tests/tools/find-chromium.mjs']],
  },
  {
    name: 'types',
    what: 'TypeScript, app and engine',
    commands: [
      ['tsc', '--noEmit', '-p', '.'],
      ['tsc', '--noEmit', '-p', 'src/engine.tsconfig.json'],
    ],
  },
  { name: 'lint', what: 'lint and format', commands: [['biome', 'check', '--error-on-warnings']] },
  { name: 'unused', what: 'unused files, exports and packages', commands: [['knip']] },
  { name: 'build', what: 'production build', commands: [['vite', 'build']] },
  { name: 'budgets', what: 'byte budgets of the build', commands: [['node', 'tests/budgets.mjs']] },
]
const journeys = (name, what) => ({ name, what, commands: [vitest(name, name)], counts: true })
const browser = journeys('browser', 'journeys in Chromium')
const faults = journeys('faults', 'journeys in which something breaks')

// Two rows of stages side by side. What breaks things is mostly waited for, so that it costs the others little; it needs
// the build, and so do the journeys, which come later than that by far.
const rows = [
  [...statics, faults],
  [unit, browser],
]
const stages = rows.flat()

const asked = process.argv.slice(2)
const unknown = asked.filter(name => !stages.some(stage => stage.name === name))
if (unknown.length > 0) {
  console.error(
    `No stage called ${unknown.join(', ')}; there are: ${stages.map(stage => stage.name).join(', ')}.`,
  )
  process.exit(2)
}

const totals = { passed: 0, failed: 0, skipped: 0 }
const finished = []
let failed = null
const begun = performance.now()

await mkdir(reports, { recursive: true })
const wanted = rows.map(row => row.filter(({ name }) => asked.length === 0 || asked.includes(name)))
const beside = wanted.every(row => row.length > 0)
await Promise.all(wanted.map(row => inTurn(row, beside)))

console.log(
  failed
    ? `\nStopped at ${failed} after ${secondsSince(begun)}; before it: ${finished.join(', ') || 'nothing'}.`
    : `\nAll stages passed in ${secondsSince(begun)}: ${finished.join(', ')}.`,
)
if (totals.skipped > 0) console.log(`${totals.skipped} skipped`)
console.log(`${totals.passed} passed, ${totals.failed} failed`)
process.exitCode = failed ? 1 : 0

/** Runs stages one after the other until one fails, here or beside. What runs beside others is printed as a whole. */
async function inTurn(row, beside) {
  for (const stage of row) {
    if (failed) return
    const head = `\n== ${stage.name}: ${stage.what}`
    if (!beside) console.log(head)
    const start = performance.now()
    const printed = beside ? [] : null
    const right = await passes(stage, printed)
    if (printed) process.stdout.write(Buffer.concat([Buffer.from(`${head}\n`), ...printed]))
    console.log(`${right ? 'PASS' : 'FAIL'} ${stage.name} (${secondsSince(start)})`)
    if (right) finished.push(stage.name)
    else failed ??= stage.name
  }
}

/**
 * Runs one stage's commands in order, what they print kept in the list if there is one, and adds its tests to the totals;
 * a failed stage is never without a failure.
 */
async function passes(stage, printed) {
  const report = join(reports, `${stage.name}.json`)
  await rm(report, { force: true })
  let right = true
  for (const command of stage.commands) {
    right = (await exitCode(command, printed)) === 0
    if (!right) break
  }
  const counted = stage.counts ? await countsIn(report) : { passed: 0, failed: 0, skipped: 0 }
  if (stage.counts && counted.passed === 0) right = false
  if (counted.failed > 0) right = false
  totals.passed += counted.passed
  totals.skipped += counted.skipped
  totals.failed += right ? 0 : Math.max(1, counted.failed)
  return right
}

function exitCode([program, ...args], printed) {
  return new Promise((resolve, reject) => {
    const path = [join(root, 'node_modules', '.bin'), process.env.PATH].join(delimiter)
    const child = spawn(program, args, {
      cwd: root,
      env: { ...process.env, PATH: path },
      shell: process.platform === 'win32',
      stdio: printed ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    })
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', bytes => printed.push(bytes))
    child.on('error', reject)
    child.on('close', code => resolve(code ?? 1))
  })
}

/** Totals of one vitest report; a file that broke before its first test counts as one failure. */
async function countsIn(report) {
  const text = await readFile(report, 'utf8').catch(() => null)
  if (text === null) return { passed: 0, failed: 0, skipped: 0 }
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(text)
  const broken = testResults.filter(
    file => file.status === 'failed' && !file.assertionResults.some(test => test.status === 'failed'),
  ).length
  return { passed: numPassedTests, failed: numFailedTests + broken, skipped: numPendingTests + numTodoTests }
}

function secondsSince(start) {
  return `${((performance.now() - start) / 1000).toFixed(1)} s`
}
