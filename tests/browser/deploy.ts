// A second build made from the first, as a next release would differ: its script has another name, its page another
// mark, and the list in its service worker says so. The old script is gone.
import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { integrityOf } from '../../vite.config'

/** What the host answers with, and what the service worker does. */
const pages = ['index.html', 'shell.html']

/** What the second build's page carries and the first's does not. */
export const secondMark = 'meta[name="build"][content="second"]'

/** Copies `first` into a fresh folder and makes it a later release; `remove` deletes the folder. */
export async function secondBuild(first: string): Promise<{ folder: string; remove: () => Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'second-build-'))
  await cp(first, folder, { recursive: true })

  const page = await readFile(join(folder, 'index.html'), 'utf8')
  const script = /<script [^>]*src="\.\/assets\/([^"]+)\.js"/.exec(page)?.[1]
  if (!script) throw new Error('The built page loads no script: there is nothing to release anew.')

  const assets = join(folder, 'assets')
  await rename(join(assets, `${script}.js`), join(assets, `${script}-second.js`))
  const texts = [...pages, 'sw.js', ...(await readdir(assets)).filter(isScript).map(name => `assets/${name}`)]
  for (const name of texts) {
    await change(join(folder, name), text => text.replaceAll(`${script}.js`, `${script}-second.js`))
  }
  for (const name of pages)
    await change(join(folder, name), text =>
      text.replace('</head>', '<meta name="build" content="second"></head>'),
    )
  await change(join(folder, 'sw.js'), text => {
    const marked = text.replace(/(url:\s*"shell\.html",\s*revision:\s*")/, '$1second')
    if (marked !== text) return marked
    return replaced(text, /(revision:\s*")([^"]*",\s*url:\s*"shell\.html")/, '$1second$2')
  })
  await seal(folder)
  return { folder, remove: () => rm(folder, { recursive: true }) }
}

/** Gives the list in the service worker what it holds each file against. */
async function seal(folder: string): Promise<void> {
  const path = join(folder, 'sw.js')
  const text = await readFile(path, 'utf8')
  const urls = [...text.matchAll(/url:\s*"([^"]+)"/g)].map(([, url]) => url!)
  const seals = new Map<string, string>()
  for (const url of urls) seals.set(url, integrityOf(await readFile(join(folder, url))))
  const sealed = text.replace(/\{[^{}]*url:\s*"([^"]+)"[^{}]*\}/g, (entry, url) =>
    entry.replace(/(integrity:\s*")[^"]*/, `$1${seals.get(url)}`),
  )
  await writeFile(path, sealed)
}

function isScript(name: string): boolean {
  return name.endsWith('.js')
}

async function change(path: string, edit: (text: string) => string): Promise<void> {
  await writeFile(path, edit(await readFile(path, 'utf8')))
}

function replaced(text: string, pattern: RegExp, by: string): string {
  const next = text.replace(pattern, by)
  if (next === text) throw new Error(`The service worker lists no ${pattern.source}.`)
  return next
}
