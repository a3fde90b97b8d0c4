// Draws the PNG icons in public/ from public/icon.svg with headless Chromium: node tests/tools/draw-icons.mjs.
// The maskable and the Apple icon are opaque to the edge, without contours, their art inside the central safe circle.
import { readFile, writeFile } from 'node:fs/promises'
import { chromium } from 'playwright-core'
import { chromiumFlags, chromiumPath } from './chromium.mjs'
import { smallPng } from './small-png.mjs'

const folder = new URL('../../public/', import.meta.url)
const art = await readFile(new URL('icon.svg', folder), 'utf8')

const drawings = [
  { file: 'icon-192.png', size: 192 },
  { file: 'icon-512.png', size: 512 },
  { file: 'maskable-512.png', size: 512, toTheEdge: true },
  { file: 'apple-touch-icon.png', size: 180, toTheEdge: true },
]

/** The share of the width that a mask may always be trusted to keep, as a radius. */
const SAFE_RADIUS = 0.4

const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags })
try {
  for (const { file, size, toTheEdge = false } of drawings) {
    const page = await browser.newPage({ viewport: { width: size, height: size } })
    await page.setContent(`<style>*{margin:0}svg{display:block;inline-size:${size}px}</style>${art}`)
    if (toTheEdge) await page.evaluate(fillToTheEdge, SAFE_RADIUS)
    const drawn = await page.screenshot({ omitBackground: true })
    const pixels = await page.evaluate(pixelsOf, { base64: drawn.toString('base64'), size })
    await writeFile(new URL(file, folder), smallPng(Buffer.from(pixels, 'base64'), size))
    await page.close()
    console.log(`public/${file}`)
  }
} finally {
  await browser.close()
}

/** Runs in the page: the pixels of a picture, red, green, blue and alpha. */
async function pixelsOf({ base64, size }) {
  const bytes = Uint8Array.from(atob(base64), character => character.charCodeAt(0))
  const canvas = new OffscreenCanvas(size, size).getContext('2d')
  canvas.drawImage(await createImageBitmap(new Blob([bytes], { type: 'image/png' })), 0, 0)
  const { data } = canvas.getImageData(0, 0, size, size)
  let text = ''
  for (let at = 0; at < data.length; at += 8192) text += String.fromCharCode(...data.subarray(at, at + 8192))
  return btoa(text)
}

/** Runs in the page: squares the ground, drops the contours, centres and shrinks the art into the safe circle. */
function fillToTheEdge(safeRadius) {
  document.querySelector('#ground').removeAttribute('rx')
  document.querySelector('#contours').remove()
  const group = document.querySelector('#art')
  const lines = [...group.querySelectorAll('[stroke] > path, path[stroke]')]
  const points = lines.flatMap(line => {
    const length = line.getTotalLength()
    return Array.from({ length: 101 }, (_, i) => line.getPointAtLength((length * i) / 100))
  })
  const middle = key => (Math.max(...points.map(p => p[key])) + Math.min(...points.map(p => p[key]))) / 2
  const [x, y] = [middle('x'), middle('y')]
  const halfStroke = 10
  const reach = Math.max(...points.map(p => Math.hypot(p.x - x, p.y - y))) + halfStroke
  const scale = (safeRadius * 512 * 0.98) / reach
  group.setAttribute('transform', `translate(256 256) scale(${scale}) translate(${-x} ${-y})`)
}
