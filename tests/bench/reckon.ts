// How long a reckoning takes, whole and after one edit, beside the least that any program must do for its main figures
// and beside spreadsheets of the same; in Node and in Chromium. Also how the time grows with each size of a plan.
//   npx tsx tests/bench/reckon.ts          prints it
//   npx tsx tests/bench/reckon.ts --keep   writes it into RESULTS.md as well

import { writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { build } from 'vite'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { type Grown, type Measured, measureCases, measureGrowth } from './measure'
import { LAYOUTS, SPREADSHEET } from './sheets'
import type { Timing } from './timing'

interface Run {
  cases: Measured[]
  growth: Grown[]
}

/** The same in a browser, from the bundle that an app would have. Of the spreadsheets the fastest alone: the others take minutes. */
async function inChromium(): Promise<Run & { version: string }> {
  const entry = join(import.meta.dirname, 'measure.ts')
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, lib: { entry, formats: ['iife'], name: 'bench' } },
  })
  const [bundle] = [built].flat() as { output: { code: string }[] }[]
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags })
  try {
    const page = await browser.newPage()
    await page.addScriptTag({ content: bundle!.output[0]!.code })
    const run = (await page.evaluate(
      '({ cases: bench.measureCases(1), growth: bench.measureGrowth() })',
    )) as Run
    return { ...run, version: browser.version() }
  } finally {
    await browser.close()
  }
}

const ms = (time: number) => time.toFixed(time < 0.1 ? 3 : time < 10 ? 2 : 0)
const ratio = (share: number) => (share < 100 ? share.toPrecision(2) : share.toFixed(0))
const both = ({ median, least }: Timing) => `${ms(median)} (${ms(least)})`

function times(run: Run, { plan, by }: Measured): string[] {
  const row = run.cases.find(it => it.plan === plan && it.by === by)
  if (!row) return ['–', '–', '–']
  const engine = run.cases.find(it => it.plan === plan && it.by === 'engine')!
  return [both(row.whole), both(row.edit), ratio(row.edit.least / engine.edit.least)]
}

const markdown = (header: string[], rows: string[][]) =>
  [header, header.map(() => '---'), ...rows].map(cells => `| ${cells.join(' | ')} |`).join('\n')

const node: Run = { cases: measureCases(LAYOUTS.length), growth: measureGrowth() }
const browser = await inChromium()

const table = markdown(
  [
    'plan',
    'by',
    'Node whole',
    'one edit',
    '÷ engine',
    'Chromium whole',
    'one edit',
    '÷ engine',
    'differs by',
  ],
  node.cases.map(row => [
    row.plan,
    row.by,
    ...times(node, row),
    ...times(browser, row),
    row.difference === null ? '' : row.difference.toExponential(0),
  ]),
)
const growth = markdown(
  ['along', 'sizes', 'Node', 'exponent', 'Chromium', 'exponent'],
  node.growth.map((row, i) => [
    row.along,
    row.sizes.join(', '),
    ...[row, browser.growth[i]!].flatMap(({ times: each, exponent }) => [
      each.map(ms).join(', '),
      exponent.toFixed(2),
    ]),
  ]),
)
const cores = cpus()
const today = new Date().toISOString().slice(0, 10)
const results = `# How long a reckoning takes

${today}, ${cores.length} × ${cores[0]!.model} under a load of ${loadavg()[0]!.toFixed(0)}, Node ${process.version}, Chromium ${browser.version}. Written by \`npx tsx tests/bench/reckon.ts --keep\`; timings decide no test.

Milliseconds, median (fastest). “Whole” is from the complete plan to all figures, for a spreadsheet its building; “one edit” from another mass of one item to all figures. The engine keeps nothing between two edits. Floors and spreadsheets give only the load and the litres of each moment and the load and the room of each set-up, and are told beforehand what is aboard when; they differ from the engine by so much, as a share. Ratios are of the fastest edits. Spreadsheets: ${SPREADSHEET}.

${table}

Growth: the fastest run at each size, and the power of the size with which it grows.

${growth}
`
console.log(results)
if (process.argv.includes('--keep')) writeFileSync(join(import.meta.dirname, 'RESULTS.md'), results)
