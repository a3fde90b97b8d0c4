// One snapshot as a file: a line of JSON that says what it is, then the text of a backup, packed with raw deflate where
// the browser can. The line's SHA-256 tells a whole one from a damaged one.

import * as z from 'zod/mini'
import { BACKUP_CAPS } from '../files/backup'
import { canDeflate, deflate, inflate } from '../files/share'
import { sha256 } from './canonical'

const FORMAT = 'pack-reckoner/snapshot'
const VERSION = 1
/** Far more than the first line ever takes. */
const HEAD_BYTES = 2000

/**
 * `day`: the first quiet moment of a day on which something had changed; `before`: before a backup was taken in;
 * `back`: before what was taken in was taken out again.
 */
export type SnapshotReason = 'day' | 'before' | 'back'

const shape = z.object({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  at: z.number().check(z.gte(0), z.lte(8.64e15)),
  /** YYYY-MM-DD where it was made, and the date in the backup's text. */
  day: z.string().check(z.regex(/^\d{4}-\d\d-\d\d$/)),
  reason: z.enum(['day', 'before']),
  /** Of `before`: the backup was about to be taken out again, not in. */
  back: z.optional(z.boolean()),
  trips: z.number(),
  things: z.number(),
  hash: z.string(),
  packed: z.boolean(),
})
export type Head = z.infer<typeof shape>

export type ReadHead = { ok: true; head: Head; from: number } | { ok: false; reason: 'newer' | 'damaged' }

/** `text`: as a file. */
export async function packSnapshot(
  text: Blob,
  facts: Pick<Head, 'at' | 'day' | 'reason' | 'back' | 'trips' | 'things'>,
): Promise<Blob> {
  const packed = canDeflate()
  const head: Head = { format: FORMAT, version: VERSION, ...facts, hash: await sha256(text), packed }
  return new Blob([`${JSON.stringify(head)}\n`, packed ? await deflate(text) : text])
}

export async function readHead(file: Blob): Promise<ReadHead> {
  const start = await file.slice(0, HEAD_BYTES).text()
  const end = start.indexOf('\n')
  const value = end < 0 ? null : parsed(start.slice(0, end))
  if (value?.format === FORMAT && Number(value.version) > VERSION) return { ok: false, reason: 'newer' }
  const found = shape.safeParse(value)
  if (!found.success) return { ok: false, reason: 'damaged' }
  return { ok: true, head: found.data, from: new TextEncoder().encode(start.slice(0, end + 1)).length }
}

/** The backup's text; null when the file is damaged. */
export async function snapshotText(file: Blob): Promise<string | null> {
  const read = await readHead(file)
  if (!read.ok) return null
  const { head, from } = read
  const body = new Uint8Array(await file.slice(from).arrayBuffer())
  const bytes = head.packed ? await unpacked(body) : body
  return bytes && (await sha256(bytes)) === head.hash ? new TextDecoder().decode(bytes) : null
}

async function unpacked(body: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | null> {
  if (!canDeflate()) return null
  // In UTF-8 a character of the cap may take three bytes.
  const result = await inflate(body, 3 * BACKUP_CAPS.fileBytes)
  return result.ok ? result.bytes : null
}

function parsed(line: string): Record<string, unknown> | null {
  try {
    return JSON.parse(line)
  } catch {
    // Whatever stands there instead of a head, the file is damaged; the caller says so.
    return null
  }
}
