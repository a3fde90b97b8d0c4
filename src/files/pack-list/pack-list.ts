// A list of packs as others open it: what their makers say, and what its giver says of them only where that is wished.
// Whose a pack is and which are starred is the giver's own, and never goes along.

import * as z from 'zod/mini'
import {
  CAPS,
  checkDraft,
  cleanWords,
  type DraftPack,
  type DraftSetup,
  emptyDraft,
  type OwnFacts,
  withoutOwnFacts,
} from '../../plan'

export const PACKS_FORMAT = 'pack-reckoner/packs'
const PACKS_VERSION = 1

/** What its giver may say of a pack. */
const SAID = ['aside', 'notes', 'tags'] as const satisfies (keyof OwnFacts)[]

export type GivenPacks = (Omit<DraftPack, 'id' | 'setups' | 'has' | 'starred'> & {
  setups: Omit<DraftSetup, 'id'>[]
})[]

export interface PacksDocument {
  format: typeof PACKS_FORMAT
  version: typeof PACKS_VERSION
  packs: GivenPacks
}

/** The packs as a file or link holds them; with notes, tags and the reasons why some are set aside only if that is wished. */
export const givenPacks = (
  packs: readonly DraftPack[],
  { withNotes }: { withNotes: boolean },
): PacksDocument => ({
  format: PACKS_FORMAT,
  version: PACKS_VERSION,
  packs: packs.map(pack => {
    const { id: _id, setups, ...facts } = withoutOwnFacts(pack)
    const said = withNotes ? SAID.flatMap(fact => (pack[fact] === undefined ? [] : [[fact, pack[fact]]])) : []
    return { ...facts, ...Object.fromEntries(said), setups: setups.map(({ id: _, ...setup }) => setup) }
  }),
})

export type ReadPacks =
  | { ok: true; packs: DraftPack[] /** What could not be read, in words. */; leftOut: string[] }
  | { ok: false; message: string }

const refuse = (message: string): ReadPacks => ({ ok: false, message })

const part = z.record(z.string(), z.unknown())
const shape = z.object({ packs: z.array(z.unknown()).check(z.maxLength(CAPS.packs)) })
const packShape = z.looseObject({ setups: z.array(part).check(z.maxLength(CAPS.setups)) })

/** Reads what somebody else may have written. Ids come from `newId`. Never throws. */
export function readPacks(unclean: unknown, newId: () => string): ReadPacks {
  const value = cleanWords(unclean)
  const { format, version } = (value ?? {}) as Record<string, unknown>
  if (format !== PACKS_FORMAT) return refuse('This holds no list of packs.')
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse('The list does not say which version it is: ask for it once more.')
  if (version > PACKS_VERSION)
    return refuse(
      'The list was made by a newer version of Pack Reckoner: update the app, then open it again.',
    )
  const list = shape.safeParse(value)
  if (!list.success) {
    const isLong = list.error.issues.some(({ code }) => code === 'too_big')
    return refuse(
      isLong
        ? `The list holds more than ${CAPS.packs} packs: ask for it in parts.`
        : 'The list is damaged: ask for it once more.',
    )
  }
  const leftOut: string[] = []
  const packs = list.data.packs.flatMap((each, i): DraftPack[] => {
    const read = packShape.safeParse(each)
    if (!read.success) {
      leftOut.push(`Pack ${i + 1} is damaged and left out`)
      return []
    }
    const { has: _has, starred: _starred, setups, ...facts } = read.data
    return [{ ...facts, id: newId(), setups: setups.map(setup => ({ ...setup, id: newId() })) }]
  })
  const checked = checkDraft({ ...emptyDraft(), packs })
  if (!checked.ok) return refuse(`The list cannot be used: it ${checked.message}.`)
  return { ok: true, packs: checked.draft.packs, leftOut: [...leftOut, ...checked.leftOut] }
}
