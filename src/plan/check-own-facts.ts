// What the app alone knows of a pack or a trip, checked where it comes from outside. Apart from the fields themselves,
// which the first page needs.

import { OWN_FACTS, type OwnFacts, type Takes } from './app-fields'

/** Checks each own fact of a pack of unknown origin; the names of those that are none. */
export function badOwnFacts(pack: object): (keyof OwnFacts)[] {
  const facts = pack as Record<keyof OwnFacts, unknown>
  return OWN_FACTS.filter(field => Object.hasOwn(pack, field) && !IS_SOUND[field](facts[field]))
}

/** Longer notes and lists of words were typed by nobody. */
const OWN_CAPS = { notesChars: 5000, tags: 30, tagChars: 200 } as const

const isText = (most: number) => (value: unknown) => typeof value === 'string' && value.length <= most
const IS_SOUND: Record<keyof OwnFacts, (value: unknown) => boolean> = {
  has: value => value === 'owned' || value === 'wanted',
  starred: value => value === true,
  aside: isText(OWN_CAPS.notesChars),
  notes: isText(OWN_CAPS.notesChars),
  tags: value =>
    Array.isArray(value) && value.length <= OWN_CAPS.tags && value.every(isText(OWN_CAPS.tagChars)),
}

/** Whether a value of unknown origin names a pack and a set-up. */
export function isTakes(value: unknown): value is Takes {
  const { pack, setup, ...rest } = (value ?? {}) as Record<string, unknown>
  return typeof pack === 'string' && typeof setup === 'string' && Object.keys(rest).length === 0
}
