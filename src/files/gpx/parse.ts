// GPX 1.0 and 1.1 out of XML text, piece by piece: tracks, routes and waypoints with elevation and name.
// Everything else in the file (times, extensions) is walked past. Structure: the GPX 1.1 schema (from memory).

import { SaxesParser, type SaxesTagPlain } from 'saxes'
import { createCollector } from './collect'
import { GPX_CAPS } from './limits'
import { refusal } from './refuse'
import type { GpxFile } from './types'

/** Which elements count inside which; anything else, and all inside it, is passed over. */
const INSIDE: Readonly<Record<string, readonly string[]>> = {
  gpx: ['trk', 'rte', 'wpt'],
  trk: ['name', 'trkseg'],
  trkseg: ['trkpt'],
  rte: ['name', 'rtept'],
  trkpt: ['ele', 'name'],
  rtept: ['ele', 'name'],
  wpt: ['ele', 'name'],
}

/** A text longer than this is cut while reading: no elevation or name needs more. */
const MOST_TEXT = 2000

export interface GpxParser {
  /** Takes the next piece of text. Throws a refusal. */
  write(text: string): void
  /** What the whole text held; `cut` when its bytes broke off inside a character. Throws a refusal. */
  end(cut: boolean): GpxFile
}

export function createGpxParser(): GpxParser {
  const xml = new SaxesParser<{ xmlns: false; position: false }>({ xmlns: false, position: false })
  const collector = createCollector()
  // The names of the open elements; '' for one that does not count.
  const open: string[] = []
  let prefix = ''
  let text = ''
  let ended = false

  const after = () => (collector.points > 0 ? `after point ${collector.points}` : 'before its first point')

  xml.on('error', () => {
    if (open.length === 0 && !ended)
      throw refusal(
        'This is not an XML file, so it cannot be GPX: export the track as GPX 1.1 and choose that file.',
      )
    throw refusal(
      `Line ${xml.line} is not well-formed XML (${after()}): export the file again, or mend that line in a text editor.`,
    )
  })

  xml.on('opentag', tag => {
    if (open.length >= GPX_CAPS.depth)
      throw refusal(
        `Elements are nested deeper than ${GPX_CAPS.depth} (line ${xml.line}, ${after()}); GPX needs 5: export the track again without extensions.`,
      )
    const name = open.length === 0 ? root(tag) : counted(tag.name)
    open.push(name)
    if (name) collector.open(name, tag.attributes)
    text = ''
  })

  const addText = (piece: string) => {
    const top = open.at(-1)
    if ((top === 'ele' || top === 'name') && text.length < MOST_TEXT) text += piece.slice(0, MOST_TEXT)
  }
  xml.on('text', addText)
  xml.on('cdata', addText)

  xml.on('closetag', () => {
    const name = open.pop()
    if (name) collector.close(name, { text, parent: open.at(-1) ?? '' })
    ended ||= open.length === 0
  })

  function root({ name, attributes }: SaxesTagPlain): string {
    const colon = name.indexOf(':')
    prefix = name.slice(0, colon + 1)
    if (name.slice(colon + 1) === 'html')
      throw refusal('This is a web page, not a GPX file: use the page’s own download, and choose that file.')
    if (name.slice(colon + 1) !== 'gpx')
      throw refusal(
        `This is XML but not GPX: it begins with <${name.slice(0, 40)}>. Export the track as GPX 1.1 and choose that file.`,
      )
    const version = attributes.version?.trim()
    if (version && version !== '1.0' && version !== '1.1')
      throw refusal(
        `This is GPX "${version.slice(0, 20)}"; versions 1.0 and 1.1 are read: export the track as GPX 1.1.`,
      )
    return 'gpx'
  }

  /** The element's name if it is one of GPX (it has the root's prefix) in its place; else ''. */
  function counted(name: string): string {
    if (!name.startsWith(prefix)) return ''
    const local = name.slice(prefix.length)
    return INSIDE[open.at(-1) ?? '']?.includes(local) ? local : ''
  }

  return {
    write: piece => void xml.write(piece),
    end(cut) {
      if (!ended && (open.length > 0 || cut))
        throw refusal(`The file breaks off ${after()}: copy or download it again, whole.`)
      xml.close()
      return collector.take()
    },
  }
}
