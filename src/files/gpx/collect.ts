// Gathers what counts of a GPX file as its elements open and close: checks each point as it comes.

import { counted, countText } from '../../units'
import { ELEVATION_M, GPX_CAPS } from './limits'
import { cleanName } from './name'
import { decimal, growingNumbers } from './numbers'
import { refusal } from './refuse'
import type { GpxFile, GpxLine, GpxWaypoint } from './types'

type Attributes = Readonly<Record<string, string>>

const LATITUDE = { attribute: 'lat', word: 'latitude', most: 90 } as const
const LONGITUDE = { attribute: 'lon', word: 'longitude', most: 180 } as const

export function createCollector() {
  const lines: GpxLine[] = []
  const waypoints: GpxWaypoint[] = []
  const left = { elevations: 0, shortLines: 0, waypoints: 0 }
  let points = 0
  let line = newLine()
  let point = { latDeg: 0, lonDeg: 0, eleM: Number.NaN, name: '' }

  function open(element: string, attributes: Attributes) {
    if (element === 'trk' || element === 'rte') startLine()
    if (element === 'trkseg' || element === 'rte') line.segmentStarts.push(line.latDeg.length)
    if (element === 'trkpt' || element === 'rtept' || element === 'wpt') openPoint(attributes)
  }

  // A file may hold millions of empty tracks: they share one line.
  function startLine() {
    if (line.latDeg.length > 0) line = newLine()
    line.name = ''
    line.segmentStarts = []
  }

  function openPoint(attributes: Attributes) {
    points += 1
    if (points > GPX_CAPS.points)
      throw refusal(
        `The file holds more than ${countText(GPX_CAPS.points)} points: thin the track out, or export it in parts.`,
      )
    point = {
      latDeg: degrees(attributes, LATITUDE),
      lonDeg: degrees(attributes, LONGITUDE),
      eleM: Number.NaN,
      name: '',
    }
  }

  function degrees(attributes: Attributes, { attribute, word, most }: typeof LATITUDE | typeof LONGITUDE) {
    const text = attributes[attribute]
    if (text === undefined)
      throw refusal(`Point ${points} has no ${word} (${attribute}="…"): export the file again.`)
    const value = decimal(text)
    if (Number.isNaN(value))
      throw refusal(
        `Point ${points} has the ${word} "${cleanName(text).slice(0, 40)}": it must be a number of degrees such as 46.5, with a decimal point.`,
      )
    if (Math.abs(value) > most)
      throw refusal(
        `Point ${points} has the ${word} ${cleanName(text).slice(0, 40)}; it must lie from −${most} to ${most} degrees: mend or remove that point.`,
      )
    return value
  }

  function close(element: string, { text, parent }: { text: string; parent: string }) {
    if (element === 'ele') point.eleM = elevation(text)
    else if (element === 'name') {
      if (parent === 'trk' || parent === 'rte') line.name = cleanName(text)
      else point.name = cleanName(text)
    } else if (element === 'trkpt' || element === 'rtept') {
      line.latDeg.push(point.latDeg)
      line.lonDeg.push(point.lonDeg)
      line.eleM.push(point.eleM)
      if (point.name) addWaypoint()
    } else if (element === 'wpt') addWaypoint()
    else if (element === 'trk') closeLine('track')
    else if (element === 'rte') closeLine('route')
  }

  function elevation(text: string): number {
    const value = decimal(text)
    if (value >= ELEVATION_M.min && value <= ELEVATION_M.max) return value
    left.elevations += 1
    return Number.NaN
  }

  function addWaypoint() {
    if (waypoints.length === GPX_CAPS.waypoints) left.waypoints += 1
    else waypoints.push({ name: point.name, latDeg: point.latDeg, lonDeg: point.lonDeg })
  }

  function closeLine(kind: GpxLine['kind']) {
    const { latDeg, lonDeg, eleM, name } = line
    if (latDeg.length < 2) {
      left.shortLines += 1
      return
    }
    if (lines.length === GPX_CAPS.lines)
      throw refusal(`The file holds more than ${GPX_CAPS.lines} tracks: export only the ones of this trip.`)
    const starts = line.segmentStarts.filter((start, i, all) => start < (all[i + 1] ?? latDeg.length))
    lines.push({
      kind,
      name: name || `${kind === 'track' ? 'Track' : 'Route'} ${lines.length + 1}`,
      isNamed: name !== '',
      latDeg: latDeg.take(),
      lonDeg: lonDeg.take(),
      eleM: eleM.take(),
      segmentStarts: starts,
    })
  }

  return {
    open,
    close,
    /** How many points were opened so far. */
    get points() {
      return points
    },
    /** The file; throws a refusal where there is no track to walk in it. */
    take(): GpxFile {
      if (points === 0)
        throw refusal('The file holds no points: record or draw the track first, then export it as GPX.')
      if (lines.length === 0)
        throw refusal(
          `The file holds ${counted(points, 'point')} but no track or route with two or more: export the track itself, not only its waypoints.`,
        )
      return { lines, waypoints, notes: notesOn(left) }
    },
  }
}

const newLine = () => ({
  name: '',
  latDeg: growingNumbers(),
  lonDeg: growingNumbers(),
  eleM: growingNumbers(),
  segmentStarts: [] as number[],
})

function notesOn(left: { elevations: number; shortLines: number; waypoints: number }): string[] {
  const notes: string[] = []
  if (left.elevations > 0)
    notes.push(
      `${counted(left.elevations, 'elevation')} could not be used (not a number from ${ELEVATION_M.min} to ${ELEVATION_M.max} m) and counted as missing.`,
    )
  if (left.shortLines > 0)
    notes.push(`${counted(left.shortLines, 'track')} with fewer than two points left out.`)
  if (left.waypoints > 0)
    notes.push(
      `Only the first ${GPX_CAPS.waypoints} named points were looked at; ${left.waypoints} were left out.`,
    )
  return notes
}
