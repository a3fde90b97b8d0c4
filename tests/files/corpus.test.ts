// Hostile, broken and unusual files, one a line: each is read, or refused with words that say what to do.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it, test } from 'vitest'
import { readGpx } from '../../src/files/gpx/read'
import { measureFile } from '../../src/files/gpx/track'
import { unfinite } from '../tools/doors'

const folder = new URL('../hostile/gpx/', import.meta.url)
const read = (name: string) => readGpx(new Blob([readFileSync(new URL(name, folder))]))

const refused: Record<string, RegExp> = {
  'entity-bomb.gpx': /document type or an entity.*export it again as plain GPX/,
  'external-entity.gpx': /document type or an entity/,
  'late-entity.gpx': /document type or an entity \(<!ENTITY\)/,
  'truncated.gpx': /breaks off after point 2: copy or download it again/,
  'truncated-in-tag.gpx': /breaks off after point 1:/,
  'web-page.gpx': /web page, not a GPX file/,
  'xhtml.gpx': /web page, not a GPX file/,
  'other-xml.gpx': /XML but not GPX: it begins with <kml>/,
  'not-xml.gpx': /not an XML file/,
  'deep.gpx': /nested deeper than 30/,
  'latin1-marked-utf8.gpx': /marked as UTF-8 text but holds other bytes: save it as UTF-8/,
  'unknown-encoding.gpx': /"x-klingon", which cannot be read here: save it as UTF-8/,
  'zipped.gpx': /packed.*unpack it/,
  'empty.gpx': /empty: export it again/,
  'latitude-96.gpx': /Point 2 has the latitude 96\.01; it must lie from −90 to 90 degrees/,
  'longitude-181.gpx': /Point 2 has the longitude -180\.5; it must lie from −180 to 180 degrees/,
  'decimal-comma.gpx': /Point 1 has the latitude "46,5".*46\.5/,
  'no-longitude.gpx': /Point 1 has no longitude/,
  'no-points.gpx': /holds no points/,
  'waypoints-only.gpx': /1 point but no track or route/,
  'version-2.gpx': /GPX "2\.0"; versions 1\.0 and 1\.1 are read/,
  'mismatched.gpx': /Line 1 is not well-formed XML \(after point 2\)/,
  'attribute-bare.gpx': /Line 2 is not well-formed XML/,
  'attribute-twice.gpx': /Line 2 is not well-formed XML/,
  'cdata-unclosed.gpx': /breaks off before its first point/,
  'comment-unclosed.gpx': /breaks off before its first point/,
  'comment-with-dashes.gpx': /Line 2 is not well-formed XML/,
  'doctype-external.gpx': /document type or an entity \(<!DOCTYPE\)/,
  'doctype-in-comment.gpx': /document type or an entity/,
  'doctype-in-small-letters.gpx': /document type or an entity/,
  'parameter-entity.gpx': /document type or an entity/,
  'quadratic-entity.gpx': /document type or an entity/,
  'unknown-entity.gpx': /Line 2 is not well-formed XML/,
  'huge-reference.gpx': /Line 2 is not well-formed XML/,
  'surrogate-reference.gpx': /Line 2 is not well-formed XML/,
  'nul-reference.gpx': /Line 2 is not well-formed XML/,
  'nul.gpx': /Line 2 is not well-formed XML/,
  'json.gpx': /not an XML file/,
  'space-before.gpx': /not an XML file/,
  'latitude-1e400.gpx': /Point 1 has the latitude 1e400; it must lie from −90 to 90/,
  'latitude-minus-1e5.gpx': /Point 1 has the latitude -1e5; it must lie from −90 to 90/,
  'latitude-hex.gpx': /Point 1 has the latitude "0x10": it must be a number of degrees/,
  'latitude-nan.gpx': /Point 1 has the latitude "NaN": it must be a number of degrees/,
  'longitude-empty.gpx': /Point 1 has the longitude "": it must be a number of degrees/,
  'longitude-of-50-digits.gpx': /Point 1 has the longitude "7\.1{38}": it must be a number/,
  'longitude-two.gpx': /Point 1 has the longitude "7 8": it must be a number of degrees/,
  'overlong-utf8.gpx': /marked as UTF-8 text but holds other bytes/,
  'text-after.gpx': /Line 3 is not well-formed XML \(after point 2\)/,
  'two-roots.gpx': /Line 3 is not well-formed XML \(after point 2\)/,
  'unclosed.gpx': /breaks off after point 2/,
  'unclosed-tag.gpx': /breaks off before its first point/,
  'utf7.gpx': /"UTF-7", which cannot be read here: save it as UTF-8/,
}

/** What is read: names of tracks, points and named places. */
const taken: Record<string, { lines: string[]; points: number[]; places: string[] }> = {
  'latin1.gpx': { lines: ['Überquerung'], points: [2], places: [] },
  'utf16le.gpx': { lines: ['Überquerung'], points: [2], places: [] },
  'utf16be-without-mark.gpx': { lines: ['Überquerung'], points: [2], places: [] },
  'utf8-mark-says-latin1.gpx': { lines: ['Überquerung'], points: [2], places: [] },
  'says-utf16-is-utf8.gpx': { lines: ['Überquerung'], points: [2], places: [] },
  'version-1.0.gpx': { lines: ['Ridge'], points: [2], places: ['Old well'] },
  'route-only.gpx': { lines: ['Valley'], points: [3], places: ['Station', 'Bridge'] },
  'several-tracks.gpx': { lines: ['Ridge', 'Two parts'], points: [2, 4], places: [] },
  'no-elevation.gpx': { lines: ['Track 1'], points: [2], places: [] },
  'prefixed.gpx': { lines: ['Prefixed'], points: [2], places: [] },
  'odd-names-and-elevations.gpx': { lines: ['AB <b>&'], points: [2], places: [] },
  'bidi-references.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'cdata-in-points.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'cdata-name.gpx': { lines: ['<script>polluted=1</script> & Ridge'], points: [2], places: [] },
  'dates-nonsense.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'elevation-nonsense.gpx': { lines: ['Ridge'], points: [7], places: [] },
  'mark-twice.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'markup-in-names.gpx': {
    lines: ['<img src=x onerror=polluted=1>'],
    points: [2],
    places: ['<script>polluted=1</script>'],
  },
  'minus-zero.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'namespace-unbound.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'namespaces-odd.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'pole-to-pole.gpx': { lines: ['Ridge'], points: [3], places: [] },
  'processing-instructions.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'proto-elements.gpx': { lines: ['Ridge'], points: [2], places: [] },
  'same-point-always.gpx': { lines: ['Ridge'], points: [5], places: [] },
  'xml-1.1.gpx': { lines: ['Ridge'], points: [2], places: [] },
}

describe('a file that cannot be used is refused in words', () => {
  test.each(Object.entries(refused))('%s', async (name, words) => {
    const result = await read(name)
    expect(result).toMatchObject({ ok: false, message: expect.stringMatching(words) })
    if (result.ok) return
    expect(result.message).not.toMatch(/\b(please|sorry|valid|invalid|oops|forbidden|required)\b/i)
  })
})

describe('a file that is only unusual is read', () => {
  test.each(Object.entries(taken))('%s', async (name, { lines, points, places }) => {
    const result = await read(name)
    if (!result.ok) throw new Error(result.message)
    expect(result.file.lines.map(line => line.name)).toEqual(lines)
    expect(result.file.lines.map(line => line.latDeg.length)).toEqual(points)
    expect(result.file.waypoints.map(place => place.name)).toEqual(places)
    const measured = measureFile(result.file)
    if (!measured.ok) throw new Error(measured.message)
    for (const { km, sums, profile } of measured.tracks) expect(unfinite({ km, sums, profile })).toEqual([])
    expect(Object.keys(Object.prototype)).toEqual([])
  })

  it('counts elevations no place on Earth has as missing, and says so', async () => {
    const result = await read('odd-names-and-elevations.gpx')
    expect(result).toMatchObject({
      ok: true,
      file: { notes: [expect.stringContaining('1 elevation could not')] },
    })
    if (result.ok) expect([...result.file.lines[0]!.eleM]).toEqual([Number.NaN, 1000])
  })

  it('takes elements of other vocabularies and of extensions for nothing of GPX', async () => {
    const result = await read('prefixed.gpx')
    expect(result.ok && [...result.file.lines[0]!.eleM]).toEqual([Number.NaN, Number.NaN])
  })

  it('leaves out a track of one point and says so; empty segments vanish', async () => {
    const result = await read('several-tracks.gpx')
    if (!result.ok) throw new Error(result.message)
    expect(result.file.notes).toEqual(['1 track with fewer than two points left out.'])
    expect(result.file.lines[1]!.segmentStarts).toEqual([0, 2])
  })
})

describe('a file made to be heavy', () => {
  const track = (inside: string) =>
    `<?xml version="1.0"?><gpx version="1.1"><trk><trkseg>${inside}</trkseg></trk></gpx>`
  const two = '<trkpt lat="46" lon="7"/><trkpt lat="46.1" lon="7"/>'
  const many = (count: number, piece: (i: number) => string) =>
    Array.from({ length: count }, (_, i) => piece(i)).join('')
  const heavy: [string, () => string, number | RegExp][] = [
    ['a million attributes', () => track(`<trkpt ${many(1e6, i => `a${i}="" `)}lat="46" lon="7"/>${two}`), 3],
    ['an attribute of 10 MB', () => track(`<trkpt x="${'y'.repeat(1e7)}" lat="46" lon="7"/>${two}`), 3],
    ['a comment of 10 MB', () => track(`<!--${'x '.repeat(5e6)}-->${two}`), 2],
    ['a million comments', () => track(`${'<!---->'.repeat(1e6)}${two}`), 2],
    ['a million processing instructions', () => track(`${'<?x y?>'.repeat(1e6)}${two}`), 2],
    ['a name of 10 MB', () => track(two).replace('<trkseg>', `<name>${'x'.repeat(1e7)}</name><trkseg>`), 2],
    [
      'a name in a million pieces',
      () => track(two).replace('<trkseg>', `<name>${'x<b/>'.repeat(1e6)}</name><trkseg>`),
      2,
    ],
    [
      'a million references',
      () => track(two).replace('<trkseg>', `<name>${'&amp;'.repeat(1e6)}</name><trkseg>`),
      2,
    ],
    ['a million empty tracks', () => track(two).replace('<trk>', `${'<trk/>'.repeat(1e6)}<trk>`), 2],
    ['a million empty segments', () => track(`${'</trkseg><trkseg>'.repeat(1e6)}${two}`), 2],
    ['500,001 points', () => track('<trkpt lat="46" lon="7"/>'.repeat(500_001)), /more than 500,000 points/],
    ['a million levels', () => track('<a>'.repeat(1e6)), /nested deeper than 30/],
    ['10 MB of "<"', () => '<'.repeat(1e7), /not an XML file/],
    ['10 MB of "<!"', () => track('<!'.repeat(5e6)), /not well-formed XML/],
    ['10 MB of spaces in a declaration', () => track(`<!${' '.repeat(1e7)}ENTITY>`), /not well-formed XML/],
    ['a tag that never ends', () => track(`<trkpt ${'a '.repeat(5e6)}`), /not well-formed XML/],
    ['30 MB and a byte', () => ' '.repeat(30_000_001), /30\.0 MB; up to 30 MB/],
  ]
  test.each(heavy)('%s', async (_, make, expected) => {
    const result = await readGpx(new Blob([make()]))
    if (typeof expected !== 'number')
      expect(result).toMatchObject({ ok: false, message: expect.stringMatching(expected) })
    else {
      if (!result.ok) throw new Error(result.message)
      expect(result.file.lines[0]?.latDeg.length).toBe(expected)
      expect(result.file.lines[0]?.name.length).toBeLessThanOrEqual(200)
    }
  })
})

it('tries every file of the corpus', () => {
  const named = [...Object.keys(refused), ...Object.keys(taken)].sort()
  expect(readdirSync(folder).sort()).toEqual(named)
})
