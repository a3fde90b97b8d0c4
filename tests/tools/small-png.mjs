// A PNG of at most 256 colours, a fraction of what a browser writes: flat art needs no more. Format: ISO/IEC 15948.
import { crc32, deflateSync } from 'node:zlib'

const MOST_COLOURS = 256

/** The file of `size` × `size` pixels, given as bytes of red, green, blue and alpha. */
export function smallPng(pixels, size) {
  const { palette, indices } = reduced(pixels)
  const rows = Buffer.alloc((size + 1) * size)
  for (let y = 0; y < size; y++) rows.set(indices.subarray(y * size, (y + 1) * size), y * (size + 1) + 1)
  const head = Buffer.alloc(13)
  head.writeUInt32BE(size, 0)
  head.writeUInt32BE(size, 4)
  head.set([8, 3, 0, 0, 0], 8)
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('PLTE', Buffer.from(palette.flatMap(colour => colour.slice(0, 3)))),
    chunk('tRNS', Buffer.from(palette.map(([, , , a]) => a))),
    chunk('IDAT', deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

/** The commonest colours, and of every pixel the nearest of them. */
function reduced(pixels) {
  const counts = new Map()
  const colours = new Uint32Array(pixels.buffer, pixels.byteOffset, pixels.length / 4)
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1)
  const kept = [...counts].sort((a, b) => b[1] - a[1]).slice(0, MOST_COLOURS)
  const palette = kept.map(([colour]) => partsOf(colour))
  const nearest = new Map([...counts.keys()].map(colour => [colour, nearestOf(partsOf(colour), palette)]))
  return { palette, indices: Uint8Array.from(colours, colour => nearest.get(colour)) }
}

const partsOf = colour => [colour & 255, (colour >> 8) & 255, (colour >> 16) & 255, colour >>> 24]

function nearestOf(parts, palette) {
  const distance = other => parts.reduce((sum, part, i) => sum + (part - other[i]) ** 2, 0)
  return palette.reduce((best, other, i) => (distance(other) < distance(palette[best]) ? i : best), 0)
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc32(body))
  return Buffer.concat([length, body, sum])
}
