// How long the built app takes in Chromium: the first visit on a slow link, the next one without a network, typing,
// opening places, moving along the load line, a thousand packs, reading a long track, and Lighthouse where it is installed.
// They decide no test. `npm run bench:browser -- 9`: nine runs each; `-- 5 visits`: one part; `--keep` writes the table into BROWSER.md,
// `--dist=folder` takes another build.

import { writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { recordsOf } from '../browser/records'
import { serve } from '../browser/server'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { places, typing } from './large'
import { hasLighthouse, lighthouse } from './lighthouse'
import { keysBeside, packs, withPacks } from './packs'
import type { Bench } from './phone'
import { printTable } from './print-table'
import { documentOf } from './sizes'
import { longTrack } from './tracks'
import { firstVisit, offlineRepeat } from './visits'

const flags = process.argv.slice(2)
const runs = Number(flags.find(flag => /^\d+$/.test(flag)) ?? 5)
const asked = flags.filter(flag => /^[a-z]+$/.test(flag))
const dist =
  flags.find(flag => flag.startsWith('--dist='))?.slice(7) ?? join(import.meta.dirname, '..', '..', '.dist')

const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags })
const site = await serve(dist, { isPacked: true })
const found = new Map<string, number[]>()
const bench: Bench = {
  browser,
  site,
  note: (what, value) => found.set(what, [...(found.get(what) ?? []), value]),
}
const large = await recordsOf(newId =>
  drafted(documentOf({ items: 300, stops: 60, nights: 59, packs: 100 }), newId),
)
const small = await recordsOf(newId => drafted(demo, newId), { demo: true })
const few = await recordsOf(newId => drafted(withPacks(10), newId))
const many = await recordsOf(newId => drafted(withPacks(1000), newId))
const faults = new Set<string>()

const parts: Record<string, () => Promise<void>> = {
  visits: () => firstVisit(bench),
  offline: () => offlineRepeat(bench, small),
  typing: () => typing(bench, large),
  places: () => places(bench, large),
  packs: async () => {
    await packs(bench, many)
    await keysBeside(bench, few, '10 packs')
    await keysBeside(bench, many, '1,000 packs')
  },
  track: () => longTrack(bench),
  lighthouse: async () => {
    if (hasLighthouse()) for (const fault of await lighthouse(bench)) faults.add(fault)
  },
}
for (let run = 0; run < runs; run++)
  for (const [name, measure] of Object.entries(parts))
    if (asked.length === 0 || asked.includes(name)) await measure()
await browser.close()
await site.stop()

const header = ['what', 'median', 'least', 'most']
const rows = [...found].map(([what, values]) => {
  const sorted = values.toSorted((a, b) => a - b)
  return [what, ...[sorted[sorted.length >> 1]!, sorted[0]!, sorted.at(-1)!].map(shown)]
})
printTable(header, rows)
for (const fault of faults) console.log(`Lighthouse: ${fault}`)
if (!hasLighthouse()) console.log('Lighthouse is not installed: see tests/bench/lighthouse.ts')
if (flags.includes('--keep')) writeFileSync(join(import.meta.dirname, 'BROWSER.md'), kept())

function kept(): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  const [{ model } = { model: 'unknown' }] = cpus()
  return `# How long the app takes in a browser

${new Date().toISOString().slice(0, 10)}, ${cpus().length} × ${model} under a load of ${loadavg()[0]!.toFixed(0)}, Chromium ${browser.version()}, ${runs} runs. Written by \`npm run bench:browser -- ${runs} --keep\`; timings decide no test.

A window of 360 × 740. The slow link gives 1.6 Mb/s after 150 ms, and the host compresses with gzip over HTTP/1.1; “4×” and “6×”: the processor so many times slower than this one. The large plan has 300 items, 60 stops and 100 packs. Tasks are those of the page’s own thread, in time of the processor.

${[header, header.map(() => '---'), ...rows].map(line).join('\n')}
`
}

function shown(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toFixed(1)
}

function drafted(document: unknown, newId: () => string) {
  const parsed = parsePlan(document)
  if (!parsed.ok) throw new Error(parsed.problems[0]!.message)
  return fromPlanDocument(parsed.document, newId)
}
