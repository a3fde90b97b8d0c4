// What a file from outside is, by what is in it rather than by its name: the one place where files opened, dropped,
// pasted and shared are told apart. Reads no more of a file than it needs, and none of one that is too large.

import { CAPS, parseAnyValue, problemInWords, type WrittenPlan } from '../../plan'
import { PACKS_FORMAT } from '../pack-list'
import { BACKUP_CAPS } from './limits'
import { parseJson } from './parse-json'
import { backupIn } from './read'
import type { ReadTrip } from './read-trips'
import { BACKUP_FORMAT, type Backup } from './types'

export type Looked =
  | { kind: 'plan'; document: WrittenPlan }
  | { kind: 'backup'; backup: Backup }
  /** A list of packs, to be read by its own reader. */
  | { kind: 'packs'; value: unknown }
  /** To be read by their own readers. */
  | { kind: 'track' | 'table' }
  /** A shared link: the part of it that carries something. */
  | { kind: 'link'; fragment: string }
  /** `canTryAgain`: not the file hinders. */
  | { kind: 'unread'; problems: string[]; canTryAgain?: boolean }

const unread = (...problems: string[]): Looked => ({ kind: 'unread', problems })
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`

/** How much of a file is looked at to tell what it is. */
const HEAD_BYTES = 4096
/** The part of a shared link that carries something. */
const LINK = /#(?:plan|packs)=\d[^\s"<>]*/
const OPENS =
  'The app opens plan files, lists of packs and backup files (.json), tracks (.gpx) and tables (.csv).'

/** Never rejects: a file that cannot be read is `unread`, with what is wrong in words. */
export async function lookAt(file: File, readTrip: ReadTrip): Promise<Looked> {
  try {
    return file.size === 0
      ? unread('The file is empty, or did not arrive whole: copy or download it once more.')
      : await lookInto(file, readTrip)
  } catch (error) {
    const why = error instanceof Error ? error.name : String(error)
    return unread(
      `The file could not be read (${why}): choose it once more, or copy it onto this device first.`,
    )
  }
}

async function lookInto(file: File, readTrip: ReadTrip): Promise<Looked> {
  const bytes = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer())
  const packed = PACKED.find(({ marks }) => marks.every((mark, i) => bytes[i] === mark))
  if (packed) return unread(`${packed.says} ${OPENS}`)
  const head = textOf(bytes).trimStart()
  const ending = /\.(\w+)$/.exec(file.name.toLowerCase())?.[1] ?? ''
  if (/^[{[]/.test(head) || ending === 'json') return lookIntoJson(file, readTrip)
  if (/<gpx[\s>]/i.test(head) || ending === 'gpx') return { kind: 'track' }
  if (head.startsWith('<')) return unread(`The file is a web page, or XML of another kind. ${OPENS}`)
  if (LINK.test(head))
    return { kind: 'link', fragment: LINK.exec(await file.slice(0, 4 * HEAD_BYTES).text())![0] }
  const isTable = ['csv', 'tsv'].includes(ending) || /^[^\n\0]*[\t;,][^\n\0]*\n/.test(head)
  return isTable ? { kind: 'table' } : unread(`The file is of a kind that the app does not know. ${OPENS}`)
}

async function lookIntoJson(file: File, readTrip: ReadTrip): Promise<Looked> {
  if (file.size > BACKUP_CAPS.fileBytes)
    return unread(
      `The file is ${megabytes(file.size)} large; a backup is read up to ${megabytes(BACKUP_CAPS.fileBytes)}, a plan up to ${megabytes(CAPS.fileBytes)}.`,
    )
  const text = await file.text()
  const json = parseJson(text)
  if (!json.ok) return unread(json.message)
  const { format, trip, carrier, people } = (json.value ?? {}) as Record<string, unknown>
  if (format === BACKUP_FORMAT) {
    const read = backupIn(json.value, readTrip)
    return read.ok ? { kind: 'backup', backup: read.backup } : unread(read.message)
  }
  if (format === PACKS_FORMAT) return { kind: 'packs', value: json.value }
  if (format !== 'pack-reckoner/plan' && !trip && !carrier && !people)
    return unread(`The file is neither a plan nor a backup of Pack Reckoner. ${OPENS}`)
  const parsed = parseAnyValue(json.value, text.length)
  if (parsed.ok) return { kind: 'plan', document: parsed.document }
  return unread(...parsed.problems.map(problemInWords))
}

/** Beginnings of files that hold no text, as their formats' own descriptions give them. */
const PACKED = [
  { marks: [0x50, 0x4b, 3, 4], says: 'The file is a zip archive: unpack it, and open what is inside.' },
  { marks: [0x1f, 0x8b], says: 'The file is packed (gzip): unpack it, and open what is inside.' },
  { marks: [0x25, 0x50, 0x44, 0x46], says: 'The file is a PDF.' },
  { marks: [0x89, 0x50, 0x4e, 0x47], says: 'The file is a picture.' },
  { marks: [0xff, 0xd8, 0xff], says: 'The file is a picture.' },
]

/** In whichever Unicode encoding its mark says. */
function textOf(bytes: Uint8Array): string {
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0)
  const encoding = mark === 0xfffe ? 'utf-16le' : mark === 0xfeff ? 'utf-16be' : 'utf-8'
  return new TextDecoder(encoding).decode(bytes)
}
