// The list of packs beside the trips. Whatever trip is open, it is judged by all of them: what is shown and edited is the
// trip with the list in it, and parted again into both when it is kept.
// Pure. How trips give their packs to the list stands in give-packs.ts.

import type { Draft, DraftPack, Typed } from '../draft'
import { pathParts } from '../field-path'
import type { ShelfContents } from './types'

export type PackList = Pick<ShelfContents, 'packs' | 'typed'>

export interface WithDraft {
  draft: Draft
  typed: Typed
}

/** The id of the pack that a field path leads into; null: into none. */
export function packIn(path: string): string | null {
  const [area, id] = pathParts(path)
  return area === 'packs' && id !== undefined ? id : null
}

/** The unread texts at packs, and all others. */
export const textsAt = (typed: Typed, isWanted: (pack: string | null) => boolean): Typed =>
  Object.fromEntries(Object.entries(typed).filter(([path]) => isWanted(packIn(path))))

/** The texts of the list that stand at its packs. */
export const packTexts = (typed: Typed): Typed => textsAt(typed, pack => pack !== null)

/** The draft with the list in it, after the packs of its own. The same draft where there is no list. */
export function withList(draft: Draft, packs: DraftPack[]): Draft {
  if (packs.length === 0) return draft
  const own = idsOf(draft.packs)
  const listed = own.size > 0 ? packs.filter(({ id }) => !own.has(id)) : packs
  return { ...draft, packs: [...draft.packs, ...listed] }
}

export const withListTexts = (typed: Typed, texts: Typed): Typed =>
  Object.keys(texts).length === 0 ? typed : { ...texts, ...typed }

export const idsOf = (packs: readonly DraftPack[]) => new Set(packs.map(({ id }) => id))

/** What was edited as one, parted into the trip and the list again; what is the same stays the object it was. */
export function parted<S extends PackList>(
  edited: WithDraft,
  before: WithDraft & { shelf: S },
): WithDraft & { shelf: S } {
  const own = idsOf(before.draft.packs)
  const isOwn = (pack: string | null) => pack === null || own.has(pack)
  // Hidden behind a pack of the trip under the same id.
  const hidden = before.shelf.packs.filter(({ id }) => own.has(id))
  const listed = edited.draft.packs.filter(({ id }) => !own.has(id))
  const packs = sameList(before.shelf.packs, [...listed, ...hidden])
  const listTexts = textsAt(edited.typed, pack => !isOwn(pack))
  const typed = sameValues(before.shelf.typed, {
    ...textsAt(before.shelf.typed, isOwn),
    ...listTexts,
  })
  const isSameShelf = packs === before.shelf.packs && typed === before.shelf.typed
  const ownPacks = edited.draft.packs.filter(({ id }) => own.has(id))
  return {
    draft: sameValues(before.draft, {
      ...edited.draft,
      packs: sameList(before.draft.packs, ownPacks),
    }),
    typed: sameValues(before.typed, textsAt(edited.typed, isOwn)),
    shelf: isSameShelf ? before.shelf : { ...before.shelf, packs, typed },
  }
}

const sameList = <T>(before: T[], list: T[]): T[] =>
  before.length === list.length && before.every((entry, i) => entry === list[i]) ? before : list

function sameValues<T extends object>(before: T, object: T): T {
  const [was, is] = [before, object] as Record<string, unknown>[]
  const names = Object.keys(is!)
  const isSame = names.length === Object.keys(was!).length && names.every(name => was![name] === is![name])
  return isSame ? before : object
}

/** What gives its packs to the list: any trip but the demo, so that invented packs never stand among the hiker's. */
export interface Giver extends WithDraft {
  id: string
  demo: boolean
}

export const givesPacks = ({ demo, draft }: Giver): boolean => !demo && draft.packs.length > 0
