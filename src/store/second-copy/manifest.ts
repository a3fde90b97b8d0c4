// What the second copy holds: each record's file, SHA-256 of its canonical JSON and revision, and a count and hash over
// all of them. A file is named by its key and hash, so that even a lost manifest can be made again from the files.

import * as z from 'zod/mini'
import { canonical, sha256 } from '../canonical'
import { nameOf } from '../messages'
import type { Vault } from './vault'

export const MANIFEST = 'manifest.json'
const FORMAT = 'pack-reckoner/copy'
const VERSION = 1

export interface Entry {
  hash: string
  revision: number
  /** Milliseconds since 1970 of the state that was copied. */
  changedAt: number
}
export type Entries = Record<string, Entry>

export type ReadManifest =
  | { kind: 'none' | 'newer' }
  | { kind: 'read'; entries: Entries; at: number; rebuilt: boolean }

const shape = z.object({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  at: z.number(),
  count: z.number(),
  hash: z.string(),
  entries: z.record(z.string(), z.object({ hash: z.string(), revision: z.number(), changedAt: z.number() })),
})

export const fileOf = (key: string, hash: string) => `${encodeURIComponent(key)}.${hash}.json`

export async function writeManifest(vault: Vault, entries: Entries, at: number): Promise<void> {
  const seal = { count: Object.keys(entries).length, hash: await sha256(canonical(entries)) }
  await vault.write(MANIFEST, JSON.stringify({ format: FORMAT, version: VERSION, at, ...seal, entries }))
}

/** Reads the manifest; a damaged one is made again from the files. One of a newer version is not touched. */
export async function readManifest(vault: Vault): Promise<ReadManifest> {
  const text = await vault.read(MANIFEST)
  const stored = text === null ? null : parsed(text)
  if (stored?.format === FORMAT && Number(stored.version) > VERSION) return { kind: 'newer' }
  const found = shape.safeParse(stored)
  if (found.success && (await isWhole(found.data)))
    return { kind: 'read', entries: found.data.entries, at: found.data.at, rebuilt: false }
  const entries = await entriesOfFiles(vault)
  const none = text === null && Object.keys(entries).length === 0
  return none ? { kind: 'none' } : { kind: 'read', entries, at: 0, rebuilt: true }
}

async function isWhole({ entries, count, hash }: z.infer<typeof shape>): Promise<boolean> {
  return Object.keys(entries).length === count && (await sha256(canonical(entries))) === hash
}

/** The text that an entry stands for; null when it is missing or is not what was written. */
export async function readCopy(vault: Vault, key: string, { hash }: Entry): Promise<string | null> {
  const text = await vault.read(fileOf(key, hash))
  return text !== null && (await sha256(text)) === hash ? text : null
}

/** Removes every file that no entry stands for. */
export async function sweep(vault: Vault, entries: Entries): Promise<void> {
  const wanted = new Set([MANIFEST, ...Object.entries(entries).map(([key, { hash }]) => fileOf(key, hash))])
  for (const name of await vault.names()) if (!wanted.has(name)) await vault.remove(name)
}

/** Takes one record out, and whatever is left of earlier writing. */
export async function eraseFromCopy(vault: Vault, key: string): Promise<void> {
  const manifest = await readManifest(vault)
  if (manifest.kind === 'newer') {
    const begin = `${encodeURIComponent(key)}.`
    for (const name of await vault.names()) if (name.startsWith(begin)) await vault.remove(name)
    return
  }
  const { [key]: erased, ...entries } = manifest.kind === 'read' ? manifest.entries : {}
  if (erased && manifest.kind === 'read') await writeManifest(vault, entries, manifest.at)
  await sweep(vault, entries)
}

async function entriesOfFiles(vault: Vault): Promise<Entries> {
  const entries: Entries = {}
  for (const name of await vault.names()) {
    const [, key, hash] = /^(.+)\.([0-9a-f]{64})\.json$/.exec(name) ?? []
    // Where no file of the app's own lies under that name, it is nobody's.
    if (!key || !hash || /%(?![0-9A-F]{2})/.test(key)) continue
    const at = decodeURIComponent(key)
    const text = await readCopy(vault, at, { hash, revision: 0, changedAt: 0 })
    const { revision = 0, changedAt = 0 } = (text === null ? null : parsed(text)) ?? {}
    const entry = { hash, revision: Number(revision), changedAt: Number(changedAt) }
    if (text !== null && (entries[at]?.revision ?? -1) < entry.revision) entries[at] = entry
  }
  return entries
}

function parsed(text: string): Record<string, unknown> | null {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (nameOf(error) === 'SyntaxError') return null
    throw error
  }
}
