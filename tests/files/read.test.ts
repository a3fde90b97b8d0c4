// Limits, progress and cancelling of the GPX reader, and what mutated files do to it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { refusedBySize } from '../../src/files/gpx/by-size'
import { measureGpx } from '../../src/files/gpx/job'
import { GPX_CAPS } from '../../src/files/gpx/limits'
import { cleanName, soundsLikeWater } from '../../src/files/gpx/name'
import { readGpx } from '../../src/files/gpx/read'
import { gpx, point, track, walk } from './tracks'

/** More by hand: FUZZ_RUNS=100000 npx vitest run --project unit tests/files/read.test.ts */
const FUZZ_RUNS = Number(process.env.FUZZ_RUNS ?? 500)
const reading = (text: string) => readGpx(new Blob([text]))
const many = (count: number) => gpx(track('<trkpt lat="1" lon="2"/>'.repeat(count)))

describe('how much is read', () => {
  it('takes 30 MB and refuses one byte more before reading', () => {
    expect(refusedBySize({ size: GPX_CAPS.fileBytes })).toBeNull()
    expect(refusedBySize({ size: GPX_CAPS.fileBytes + 1 })).toMatchObject({
      message: expect.stringContaining('up to 30 MB'),
    })
  })

  it('never opens a file of 50 MB', async () => {
    const file = { size: 50_000_000 } as Blob
    expect(await readGpx(file)).toMatchObject({ ok: false, message: expect.stringContaining('50.0 MB') })
  })

  it('takes a track of 100,000 points', { timeout: 60_000 }, async () => {
    const result = await reading(walk({ points: 100_000, spacingM: 8, noiseM: 3 }))
    expect(result.ok && result.file.lines[0]!.latDeg.length).toBe(100_000)
  })

  it('takes 500,000 points and refuses one more', { timeout: 60_000 }, async () => {
    expect(await reading(many(GPX_CAPS.points))).toMatchObject({ ok: true })
    expect(await reading(many(GPX_CAPS.points + 1))).toMatchObject({
      ok: false,
      message: expect.stringContaining('more than 500,000 points'),
    })
  })

  it('takes 30 levels and refuses one more', async () => {
    // The root and <extensions> are two of them.
    const nested = (levels: number) =>
      gpx(
        `<extensions>${'<a>'.repeat(levels - 2)}${'</a>'.repeat(levels - 2)}</extensions>${track(point(1, 1), point(1, 2))}`,
      )
    expect(await reading(nested(30))).toMatchObject({ ok: true })
    expect(await reading(nested(31))).toMatchObject({ ok: false, message: expect.stringContaining('30') })
  })

  it('looks at the first 2000 named points and says how many it left out', async () => {
    const wpt = '<wpt lat="46" lon="7"><name>A</name></wpt>'
    const result = await reading(gpx(wpt.repeat(GPX_CAPS.waypoints + 3) + track(point(46, 7), point(46, 8))))
    if (!result.ok) throw new Error(result.message)
    expect(result.file.waypoints).toHaveLength(GPX_CAPS.waypoints)
    expect(result.file.notes).toEqual([expect.stringContaining('3 were left out')])
  })

  it('takes coordinates at the very ends of their range', async () => {
    expect(await reading(gpx(track(point(90, 180), point(-90, -180))))).toMatchObject({ ok: true })
  })
})

describe('reading as it goes on', () => {
  const text = walk({ points: 10_000, spacingM: 8, noiseM: 3 })

  it('tells growing shares up to 1', async () => {
    const shares: number[] = []
    await measureGpx(new Blob([text]), { onProgress: share => shares.push(share) })
    expect(shares.length).toBeGreaterThan(3)
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
    expect(shares[0]).toBeGreaterThan(0)
    expect(shares.at(-1)).toBe(1)
  })

  it('stops at the next slice when it is cancelled', async () => {
    const stop = new AbortController()
    const shares: number[] = []
    const onProgress = (share: number) => {
      shares.push(share)
      stop.abort()
    }
    const result = await readGpx(new Blob([text]), { signal: stop.signal, onProgress })
    expect(result).toMatchObject({ ok: false, message: expect.stringContaining('cancelled') })
    expect(shares).toHaveLength(1)
  })

  it('finds a document type that lies across two slices', async () => {
    const filler = `<?xml version="1.0"?><gpx version="1.1"><!--`
    const start = `${filler}${'x'.repeat(262_144 - filler.length - 8)}-->`
    for (const spaces of [0, 2, 4]) {
      const result = await reading(`${start}${' '.repeat(spaces)}<!DOCTYPE gpx>`)
      expect(result).toMatchObject({ ok: false, message: expect.stringContaining('document type') })
    }
  })

  it('says that a file which went away could not be read', async () => {
    const gone = new Blob(['<gpx'])
    const slice = { arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotReadableError')) } as Blob
    gone.slice = () => slice
    expect(await readGpx(gone)).toMatchObject({
      ok: false,
      message: expect.stringContaining('Choose it again'),
    })
  })
})

describe('mutated files', { timeout: 60 * 60_000 }, () => {
  const sound = gpx(
    `<wpt lat="46.001" lon="7"><ele>1</ele><name>Spring</name></wpt>${track(point(46, 7, '<ele>5</ele>'), point(46.01, 7, '<ele>9</ele>'), point(46.02, 7.01))}`,
  )
  const bits = [
    ' ',
    '7',
    '<x/>',
    '<!-- -->',
    '<',
    '>',
    '"',
    '&',
    '&#0;',
    '&lol;',
    ']]>',
    '<!--',
    '<![CDATA[',
    '<?',
    'NaN',
    '1e999',
    '-',
    '\u0000',
    '\ud800',
    '<trkpt lat="1" lon="2">',
    '</trkseg>',
    '<gpx>',
    '</gpx>',
    '<!DOCTYPE',
    '__proto__="1"',
  ]
  const mutation = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.oneof(fc.constant(0), fc.nat({ max: 30 })),
    put: fc.oneof(fc.constantFrom(...bits), fc.string({ maxLength: 5 })),
  })

  it('always give a measured track or a sentence, whatever was done to their text', async () => {
    let read = 0
    await fc.assert(
      fc.asyncProperty(fc.array(mutation, { minLength: 1, maxLength: 3 }), async mutations => {
        let text = sound
        for (const { at, cut, put } of mutations) {
          const from = Math.floor(at * text.length)
          text = text.slice(0, from) + put + text.slice(from + cut)
        }
        const result = await measureGpx(new Blob([text]))
        if (result.ok) {
          read += 1
          for (const { km, sums } of result.tracks) {
            expect(Number.isFinite(km)).toBe(true)
            for (const each of Object.values(sums)) expect(Number.isFinite(each.at(-1))).toBe(true)
          }
        } else expect(result.message.length).toBeGreaterThan(20)
      }),
      { numRuns: FUZZ_RUNS },
    )
    // Some mutations must do no harm, or the property above never saw a track.
    expect(read).toBeGreaterThan(5)
  })

  it('always give a result, whatever was done to their bytes', async () => {
    const bytes = new TextEncoder().encode(sound)
    const change = fc.tuple(fc.nat({ max: bytes.length - 1 }), fc.nat({ max: 255 }))
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 6 }), async changes => {
        const changed = bytes.slice()
        for (const [at, value] of changes) changed[at] = value
        expect(typeof (await measureGpx(new Blob([changed]))).ok).toBe('boolean')
      }),
      { numRuns: FUZZ_RUNS },
    )
  })

  it('say after which point the file breaks off, wherever it is cut', async () => {
    const points = (text: string) => text.match(/<(trkpt|wpt)\b[^>]*>/g)?.length ?? 0
    for (let end = sound.indexOf('<gpx') + 5; end < sound.lastIndexOf('>'); end++) {
      const text = sound.slice(0, end)
      const result = await reading(text)
      const where = points(text) ? `after point ${points(text)}` : 'before its first point'
      // Inside the root's own tag nothing says yet that this is GPX.
      const words = text.includes('GPX/1/1">') ? `breaks off ${where}` : 'not an XML file'
      expect(result, text.slice(-30)).toMatchObject({ ok: false, message: expect.stringContaining(words) })
    }
  })
})

describe('names', () => {
  it('lose controls, direction overrides and lone surrogates, and keep joiners and letters', () => {
    expect(cleanName('  Pass\u202egnp\u0007\n hut\u2066 ')).toBe('Passgnp hut')
    expect(cleanName('می\u200cخواهم 👩\u200d🌾')).toBe('می\u200cخواهم 👩\u200d🌾')
    expect(cleanName('a\ud800b')).toBe('ab')
  })

  it('are at most 200 characters and never end in half of one', () => {
    expect(cleanName('x'.repeat(201))).toHaveLength(200)
    expect(cleanName(`${'x'.repeat(199)}👍`)).toBe('x'.repeat(199))
  })

  it('hint at water by whole words only', () => {
    for (const name of ['Cold Spring', 'old well', 'Quelle am Weg', 'Río Seco'])
      expect(soundsLikeWater(name)).toBe(true)
    for (const name of ['Springfield', 'Farewell', 'Hut', '']) expect(soundsLikeWater(name)).toBe(false)
  })
})
