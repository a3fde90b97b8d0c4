// What the built app may weigh, gzip, in bytes, and in how many files: what a first visit must load before it runs, and
// everything that is stored for use without a network; what must have come before the first picture, and of how many
// elements that is. Limits are ours: a phone on a slow link at a trailhead. They stand a little above what is reached.
import { readdir, readFile } from 'node:fs/promises'
import { join, relative, sep } from 'node:path'
import { gzipSync } from 'node:zlib'

const dist = join(import.meta.dirname, '..', '.dist')

const manifest = JSON.parse(await read('.vite/manifest.json'))
const page = await read('index.html')
const worker = await read('sw.js')
const files = (await readdir(dist, { recursive: true, withFileTypes: true }))
  .filter(entry => entry.isFile())
  .map(entry =>
    relative(dist, join(entry.parentPath ?? entry.path, entry.name))
      .split(sep)
      .join('/'),
  )

const eager = eagerFiles()
const stored = storedFiles()
const troubles = [...missedByEager(), ...missedByStore(), ...circles(), ...(await pagesInWorkers())]

const budgets = [
  {
    what: 'the first page, drawn before anything else has come',
    mostBytes: 6300,
    mostFiles: 1,
    files: ['index.html', ...blocking()],
  },
  {
    what: 'JavaScript of the first visit',
    mostBytes: 37_000,
    mostFiles: 3,
    files: eager.filter(file => file.endsWith('.js')),
  },
  {
    what: 'CSS of the first visit',
    mostBytes: 4300,
    mostFiles: 1,
    files: eager.filter(file => file.endsWith('.css')),
  },
  {
    what: 'what is fetched ahead of the first trip',
    mostBytes: 225_000,
    mostFiles: 10,
    files: [...(/ data-ahead="([^"]*)"/.exec(page)?.[1] ?? '').matchAll(/assets\/[^ ]+/g)].map(
      ([file]) => file,
    ),
  },
  { what: 'everything stored for offline use', mostBytes: 455_000, mostFiles: 31, files: stored },
]

for (const { what, mostBytes, mostFiles, files } of budgets) {
  const bytes = (await Promise.all(files.map(gzipBytes))).reduce((sum, each) => sum + each, 0)
  console.log(`${what}: ${bytes} of ${mostBytes} bytes gzip in ${files.length} of ${mostFiles} files`)
  if (files.length === 0) troubles.push(`${what}: no file was found to weigh`)
  if (files.length > mostFiles) troubles.push(`${what} is ${files.length - mostFiles} files over its budget`)
  if (bytes > mostBytes) troubles.push(`${what} is ${bytes - mostBytes} bytes over its budget`)
}

const MOST_ELEMENTS = 45
const elements = [...page.slice(page.indexOf('<body')).matchAll(/<[a-z]/g)].length
console.log(`the first page: ${elements} of ${MOST_ELEMENTS} elements`)
if (elements > MOST_ELEMENTS)
  troubles.push(`the first page is ${elements - MOST_ELEMENTS} elements over its budget`)

for (const trouble of troubles) console.error(trouble)
process.exitCode = troubles.length > 0 ? 1 : 0

/** The guard and the entry of the page with everything it imports statically, however deep, and their style sheets. */
function eagerFiles() {
  const seen = new Set()
  const enter = key => {
    if (seen.has(key)) return
    seen.add(key)
    for (const next of manifest[key].imports ?? []) enter(next)
  }
  enter('index.html')
  enter('guard.ts')
  const chunks = [...seen].map(key => manifest[key])
  return [...new Set(chunks.flatMap(chunk => [chunk.file, ...(chunk.css ?? [])]))]
}

/** The files the service worker stores, read from the list written into it. */
function storedFiles() {
  return [...worker.matchAll(/\{\s*(?:revision:[^,}]*,\s*)?url:\s*"([^"]+)"/g)].map(match => match[1])
}

/** What the first page waits for before it is drawn. */
function blocking() {
  const sheets = page.matchAll(/<link rel="stylesheet"[^>]* href="\.\/([^"]+)"/g)
  const scripts = page.matchAll(/<script (?![^>]*(?:type="module"|async|defer))[^>]*src="\.\/([^"]+)"/g)
  return [...sheets, ...scripts].map(([, file]) => file)
}

function missedByEager() {
  const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(match => match[1])
  return named
    .filter(file => !eager.includes(file))
    .map(file => `${file} is loaded by the page and was not weighed`)
}

/** The worker itself is none of it, nor the page, for which the shell stands in, nor what only machines ask for. */
function missedByStore() {
  return files
    .filter(file => !['sw.js', 'index.html', 'robots.txt'].includes(file) && !file.startsWith('.vite/'))
    .filter(file => !isIcon(file) && !stored.includes(file))
    .map(file => `${file} is not stored for offline use`)
}

/** The system keeps the icon of an app that is installed. */
function isIcon(file) {
  return file.endsWith('.png')
}

/** Files that import each other: one of them runs before what it imports, and the app may not start. */
function circles() {
  const found = []
  const done = new Set()
  const walk = (key, path) => {
    if (path.includes(key)) found.push([...path.slice(path.indexOf(key)), key])
    else if (!done.has(key)) for (const next of manifest[key].imports ?? []) walk(next, [...path, key])
    done.add(key)
  }
  for (const key of Object.keys(manifest)) walk(key, [])
  return found.map(path => `files import each other: ${path.map(key => manifest[key].file).join(' → ')}`)
}

/** A file that a worker is started from, known by its own address in it, must not bring the page along. */
async function pagesInWorkers() {
  const reaches = (key, seen = new Set()) => {
    if (key === 'index.html' || seen.has(key)) return key === 'index.html'
    seen.add(key)
    return (manifest[key].imports ?? []).some(next => reaches(next, seen))
  }
  const workers = []
  for (const [key, { file }] of Object.entries(manifest))
    if (file.endsWith('.js') && /=import\.meta\.url/.test(await read(file))) workers.push([key, file])
  if (workers.length === 0) return ['no file was found that a worker is started from']
  return workers.filter(([key]) => reaches(key)).map(([, file]) => `${file} would run the page in a worker`)
}

function read(file) {
  return readFile(join(dist, file), 'utf8')
}

async function gzipBytes(file) {
  return gzipSync(await readFile(join(dist, file))).length
}
