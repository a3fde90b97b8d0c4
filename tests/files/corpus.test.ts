// Hostile, broken and unusual files, one a line: each is read, or refused with words that say what to do.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it, test } from 'vitest'
import { readGpx } from '../../src/files/gpx/read'

const folder = new URL('./gpx/', import.meta.url)
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

it('tries every file of the corpus', () => {
  const named = [...Object.keys(refused), ...Object.keys(taken)].sort()
  expect(readdirSync(folder).sort()).toEqual(named)
})
