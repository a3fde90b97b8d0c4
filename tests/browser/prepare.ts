// Before the journeys: a Chromium, a build no older than what it is made of, and what the app stores for its demo trip.
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { TestProject } from 'vitest/node'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { chromiumPath } from '../tools/chromium.mjs'
import type { Records } from './database'
import { recordsOf } from './records'

declare module 'vitest' {
  interface ProvidedContext {
    demoRecords: Records
    /** All pages of one profile in one process, as a phone with little memory has them. */
    oneProcess: boolean
  }
}

const root = join(import.meta.dirname, '..', '..')
// The files at the top are among what a build is made of: the configuration and the locked packages.
const atTop = readdirSync(root, { withFileTypes: true }).filter(entry => entry.isFile())
const madeOf = ['src', 'public', 'data', ...atTop.map(entry => entry.name)]

export default async function prepare({ provide }: TestProject): Promise<void> {
  process.env.CHROME_PATH = chromiumPath()
  build()
  provide('demoRecords', await demoRecords())
}

/** The records of an app whose demo trip is open at its need. */
function demoRecords(): Promise<Records> {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  return recordsOf(newId => fromPlanDocument(parsed.document, newId), { demo: true })
}

function build(): void {
  const page = join(root, '.dist', 'index.html')
  if (existsSync(page) && changedAt(page) >= Math.max(...madeOf.map(part => changedAt(join(root, part)))))
    return
  const bundler = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
  const env = { ...process.env, NODE_ENV: 'production' }
  execFileSync(process.execPath, [bundler, 'build'], { cwd: root, stdio: 'inherit', env })
}

/** When a file, or the newest thing in a folder, changed, ms. */
function changedAt(path: string): number {
  const stat = statSync(path)
  if (!stat.isDirectory()) return stat.mtimeMs
  return Math.max(stat.mtimeMs, ...readdirSync(path).map(name => changedAt(join(path, name))))
}
