// Builds the app, opens every screen with the demo trip in four windows, by day, in the dark, in forced colours, and on a
// phone in bright sun with large targets; then a page of all components in their states (tests/gallery). Writes a picture
// of each and a contact sheet a window into .cache/photographs, and says what sticks out to the side or lies over
// something else.
//   npm run photographs           all windows
//   npm run photographs -- 360    those of that width alone
// Exit code 1 when something was found. No part of npm test: pictures are for eyes.
import { mkdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import preact from '@preact/preset-vite'
import { chromium } from 'playwright-core'
import { build, preview } from 'vite'
import { backFrom, SCREENS } from '../browser/places'
import { untilQuiet } from '../browser/ways'
import { chromiumFlags, chromiumPath } from './chromium.mjs'
import { serveBuild } from './kill.mjs'
import { lookOver } from './look-over.mjs'

const root = join(import.meta.dirname, '..', '..')
const folder = join(root, '.cache', 'photographs')

const WINDOWS = [
  { width: 360, height: 740, isMobile: true, hasTouch: true },
  { width: 768, height: 1024, isMobile: true, hasTouch: true },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
]
const LIGHTS = [
  { light: 'light', media: { colorScheme: 'light', forcedColors: 'none' } },
  { light: 'dark', media: { colorScheme: 'dark', forcedColors: 'none' } },
  { light: 'forced', media: { colorScheme: 'light', forcedColors: 'active' } },
]
/** The modes for outdoors, on a phone. */
const OUTDOORS = { light: 'outdoors', media: LIGHTS[0].media, marks: { sun: 'bright', targets: 'large' } }
const NARROW_PX = 600
const lightsOf = width => (width < NARROW_PX ? [...LIGHTS, OUTDOORS] : LIGHTS)

/** Of a contact sheet, CSS px; as much of a long page as it shows is told in windows. */
const SHEET_PX = 2400
const THUMBNAIL_PX = 180
const MOST_WINDOWS = 2

const WELCOME = { name: 'Welcome', open: async () => undefined }
const DEMO = 'Look at a demo trip'

const asked = process.argv.slice(2).map(Number)
const windows = WINDOWS.filter(({ width }) => asked.length === 0 || asked.includes(width))
if (windows.length === 0) {
  console.error(`No window is ${asked.join(' or ')} px wide: ${WINDOWS.map(({ width }) => width).join(', ')}`)
  process.exit(2)
}

await build({ configFile: join(root, 'vite.config.ts'), logLevel: 'warn' })
if (asked.length === 0) await rm(folder, { recursive: true, force: true })
await mkdir(folder, { recursive: true })
const server = await serveBuild()
const gallery = await serveGallery()
const COMPONENTS = [
  { name: 'Components', open: page => page.goto(gallery.resolvedUrls.local[0]) },
  { name: 'A sheet over them', open: page => page.goto(`${gallery.resolvedUrls.local[0]}?sheet`) },
]
const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags })
try {
  const found = []
  for (const window of windows) found.push(...(await photographsOf(window)))
  for (const fault of found) console.log(fault)
  console.log(
    `${found.length} found in ${windows.length} windows, ${SCREENS.length + 1 + COMPONENTS.length} pages: ${folder}`,
  )
  process.exitCode = found.length > 0 ? 1 : 0
} finally {
  await browser.close()
  await server.close()
  await gallery.close()
}

/** The page of all components, built and served by itself. */
async function serveGallery() {
  const config = {
    configFile: false,
    root: join(root, 'tests', 'gallery'),
    base: './',
    logLevel: 'warn',
    plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false })],
    build: { outDir: join(root, '.cache', 'gallery'), emptyOutDir: true, target: 'es2022' },
  }
  await build(config)
  return preview({ ...config, preview: { port: 0, host: '127.0.0.1' } })
}

/** All pictures of one window and its contact sheet; returns what was found, each fault once for all lights. */
async function photographsOf({ width, height, ...touch }) {
  const context = await browser.newContext({ viewport: { width, height }, ...touch })
  await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'))
  const page = await context.newPage()
  const size = `${width}x${height}`
  const pictures = []
  const found = new Map()
  const take = async screen => {
    await screen.open(page)
    await untilQuiet(page)
    await page.evaluate(() => scrollTo(0, 0))
    for (const { light, media, marks = {} } of lightsOf(width)) {
      await page.emulateMedia(media)
      await page.evaluate(marks => {
        const { dataset } = document.documentElement
        for (const name of ['sun', 'targets']) delete dataset[name]
        Object.assign(dataset, marks)
      }, marks)
      // Drawings take the width that there is on the next frames.
      await page.evaluate(async () => {
        for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame)
      })
      for (const fault of await page.evaluate(lookOver)) {
        const at = `${size}, ${screen.name}: ${fault}`
        found.set(at, [...(found.get(at) ?? []), light])
      }
      const file = `${size}-${screen.name.toLowerCase().replaceAll(' ', '-')}-${light}.png`
      await page.screenshot({ path: join(folder, file), fullPage: true })
      pictures.push({ file, screen: screen.name, light })
    }
  }
  await page.goto(server.resolvedUrls.local[0])
  await page.getByRole('button', { name: DEMO }).waitFor()
  await take(WELCOME)
  await page.getByRole('button', { name: DEMO }).click()
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
  for (const screen of SCREENS) {
    await take(screen)
    await backFrom(page, screen)
  }
  for (const components of COMPONENTS) await take(components)
  await context.close()
  await contactSheet({ size, width, height, pictures })
  console.log(`${size}: ${pictures.length} pictures`)
  return [...found].map(([at, lights]) => `${at} (${lights.join(', ')})`)
}

/** A page of all pictures of a window, a screen's lights side by side, and a picture of that page. */
async function contactSheet({ size, width, height, pictures }) {
  const tall = Math.round((MOST_WINDOWS * height * THUMBNAIL_PX) / width)
  const style = `body{font:14px sans-serif;margin:16px;background:#777;color:#fff}
    main{display:flex;flex-wrap:wrap;gap:16px;align-items:start}h2{font-size:16px;margin:0 0 4px}
    div{display:grid;grid-template-columns:repeat(${lightsOf(width).length},${THUMBNAIL_PX}px);gap:4px;align-items:start}
    a{display:block;max-height:${tall}px;overflow:hidden}img{width:100%;display:block}`
  const screens = [...new Set(pictures.map(({ screen }) => screen))].map(screen => {
    const links = pictures
      .filter(picture => picture.screen === screen)
      .map(({ file, light }) => `<a href="${file}"><img src="${file}" alt="${screen}, ${light}"></a>`)
    return `<section><h2>${screen}</h2><div>${links.join('')}</div></section>`
  })
  const html = `<!doctype html><meta charset="utf-8"><title>${size}</title><style>${style}</style><h1>${size}</h1><main>${screens.join('')}</main>`
  const path = join(folder, `${size}.html`)
  await writeFile(path, html)
  const page = await browser.newPage({ viewport: { width: SHEET_PX, height: 800 } })
  await page.goto(`file://${path}`)
  await page.screenshot({ path: join(folder, `${size}.png`), fullPage: true })
  await page.close()
}
