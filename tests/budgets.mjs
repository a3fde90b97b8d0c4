// What the built app may weigh, gzip, in kB of 1000 bytes, and in how many files: what a first visit must load before
// it runs, and everything that is stored for use without a network. Limits are ours: a phone on a slow link at a
// trailhead.
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
const troubles = [...missedByEager(), ...missedByStore(), ...circles()]

const budgets = [
  {
    what: 'the first page, drawn before anything else has come',
    limitKb: 8,
    mostFiles: 1,
    files: ['index.html'],
  },
  {
    what: 'JavaScript of the first visit',
    limitKb: 50,
    mostFiles: 4,
    files: eager.filter(file => file.endsWith('.js')),
  },
  {
    what: 'CSS of the first visit',
    limitKb: 12,
    mostFiles: 1,
    files: eager.filter(file => file.endsWith('.css')),
  },
  { what: 'everything stored for offline use', limitKb: 470, mostFiles: 62, files: stored },
]

for (const { what, limitKb, mostFiles, files } of budgets) {
  const kb = (await Promise.all(files.map(gzipBytes))).reduce((sum, bytes) => sum + bytes, 0) / 1000
  console.log(`${what}: ${kb.toFixed(1)} of ${limitKb} kB gzip in ${files.length} of ${mostFiles} files`)
  if (files.length === 0) troubles.push(`${what}: no file was found to weigh`)
  if (files.length > mostFiles) troubles.push(`${what} is ${files.length - mostFiles} files over its budget`)
  if (kb > limitKb) troubles.push(`${what} is ${(kb - limitKb).toFixed(1)} kB over its budget`)
}

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

function read(file) {
  return readFile(join(dist, file), 'utf8')
}

async function gzipBytes(file) {
  return gzipSync(await readFile(join(dist, file))).length
}
