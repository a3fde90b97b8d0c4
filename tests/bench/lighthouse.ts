// Lighthouse on the first visit as a phone sees it, over HTTP/1.1. It is no package of the project, since its own list of
// packages cannot be locked: `npm install --prefix .cache/lighthouse lighthouse@12.2.3` puts it where it is looked for.

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import type { Bench } from './phone'

const home = join(import.meta.dirname, '..', '..', '.cache', 'lighthouse', 'node_modules', 'lighthouse')
const PORT = 9333

interface Result {
  lhr: {
    categories: Record<string, { title: string; score: number | null }>
    audits: Record<string, { title: string; numericValue?: number; score: number | null }>
  }
}

/** Whether it is there. */
export const hasLighthouse = () => existsSync(home)

/** Tells what it found fault with, apart from the figures. */
export async function lighthouse({ site, note }: Pick<Bench, 'site' | 'note'>): Promise<string[]> {
  const entry = pathToFileURL(join(home, 'core', 'index.js')).href
  const { default: run } = (await import(entry)) as {
    default: (url: string, flags: object) => Promise<Result>
  }
  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: [...chromiumFlags, `--remote-debugging-port=${PORT}`],
  })
  try {
    const { lhr } = await run(site.url, { port: PORT, logLevel: 'error' })
    for (const { title, score } of Object.values(lhr.categories))
      note(`Lighthouse, phone: ${title}`, 100 * (score ?? Number.NaN))
    for (const id of ['first-contentful-paint', 'largest-contentful-paint', 'total-blocking-time'])
      note(`Lighthouse, phone: ${lhr.audits[id]!.title}, ms`, lhr.audits[id]!.numericValue ?? Number.NaN)
    return Object.values(lhr.audits)
      .filter(({ score }) => score !== null && score < 0.9)
      .map(({ title, score }) => `${title} (${score})`)
  } finally {
    await browser.close()
  }
}
