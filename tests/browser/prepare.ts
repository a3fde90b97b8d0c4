// Before the journeys: a Chromium, and a build no older than what it is made of.
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { chromiumPath } from '../tools/chromium.mjs'

const root = join(import.meta.dirname, '..', '..')
// The files at the top are among what a build is made of: the configuration and the locked packages.
const atTop = readdirSync(root, { withFileTypes: true }).filter(entry => entry.isFile())
const madeOf = ['src', 'public', 'data', ...atTop.map(entry => entry.name)]

export default function prepare(): void {
  process.env.CHROME_PATH = chromiumPath()
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
