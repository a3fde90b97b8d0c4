// What the page and the worker that reads files say to each other, and how long lists cross: in portions of JSON text,
// since the page would stand still while it made values of a backup of 30 MB in one go. Text is read back several times
// faster than a structured clone.

import type { Looked } from '../../files/backup'
import { SHELF_LISTS } from '../../plan/shelf'

export interface LookAsked {
  kind: 'look'
  file: File
}

type ListName = 'trips' | (typeof SHELF_LISTS)[number]

export type LookTold =
  /** The worker goes on. */
  | { kind: 'reading' }
  /** The next entries of a long list, as the text of a list. */
  | { kind: 'entries'; of: ListName; text: string }
  /** All but the entries that were told before. */
  | { kind: 'done'; text: string }

/** As much text as is told at once, unless one entry has more: some milliseconds to read. */
const PORTION_CHARS = 250_000

/** What was read, in portions: `gathering` puts them together again. */
export function* messagesOf(looked: Looked): Generator<LookTold> {
  const { rest, lists } = withoutLists(looked)
  for (const [of, entries] of Object.entries(lists) as [ListName, unknown[]][]) {
    let portion: string[] = []
    let chars = 0
    for (const entry of entries) {
      const text = JSON.stringify(entry)
      portion.push(text)
      chars += text.length
      if (chars < PORTION_CHARS) continue
      yield { kind: 'entries', of, text: `[${portion.join()}]` }
      portion = []
      chars = 0
    }
    if (portion.length > 0) yield { kind: 'entries', of, text: `[${portion.join()}]` }
  }
  yield { kind: 'done', text: JSON.stringify(rest) }
}

/** Hears portions one by one, and gives the whole at the last one. */
export function gathering(): (told: LookTold) => Looked | null {
  const lists: Lists = {}
  return told => {
    if (told.kind === 'reading') return null
    if (told.kind === 'entries') {
      lists[told.of] ??= []
      for (const entry of JSON.parse(told.text)) lists[told.of]?.push(entry)
      return null
    }
    return withLists(JSON.parse(told.text), lists)
  }
}

type Lists = { [name in ListName]?: unknown[] }

function withoutLists(looked: Looked): { rest: Looked; lists: Lists } {
  if (looked.kind !== 'backup') return { rest: looked, lists: {} }
  const { trips, shelf } = looked.backup
  const rest = {
    ...looked.backup,
    trips: [],
    shelf: shelf && { ...shelf, ...ofShelf(() => []) },
  }
  return { rest: { kind: 'backup', backup: rest }, lists: { trips, ...ofShelf(list => shelf?.[list] ?? []) } }
}

const ofShelf = (listOf: (list: (typeof SHELF_LISTS)[number]) => unknown[]) =>
  Object.fromEntries(SHELF_LISTS.map(list => [list, listOf(list)]))

function withLists(looked: Looked, { trips, ...lists }: Lists): Looked {
  if (looked.kind !== 'backup') return looked
  Object.assign(looked.backup, trips && { trips })
  Object.assign(looked.backup.shelf ?? {}, lists)
  return looked
}
