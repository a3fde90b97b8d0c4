// What only the app knows of an item, a pack and a trip: no part of a plan, and so of no plan file.

const ITEM = ['shelf', 'litresPerKg'] as const
const PACK = ['has', 'starred', 'aside', 'notes', 'tags'] as const

export type AppField = (typeof ITEM)[number]

export const APP_FIELDS: ReadonlySet<string> = new Set(ITEM)

/** What the hiker says of a pack that no maker could: it changes no figure. */
export interface OwnFacts {
  /** Left out: the hiker only knows of it. */
  has?: 'owned' | 'wanted'
  starred?: true
  /** Why it is set aside, perhaps in no words; left out: it is not. */
  aside?: string
  notes?: string
  /** Words to find it by. */
  tags?: string[]
}

/** The pack and the set-up that a trip takes, by their ids. */
export interface Takes {
  pack: string
  setup: string
}

/** The item as a plan holds it. */
export function withoutAppFields<T extends { [field in AppField]?: unknown }>(item: T): Omit<T, AppField> {
  const { shelf: _shelf, litresPerKg: _litresPerKg, ...rest } = item
  return rest
}

/** The pack as a plan holds it, as far as its own fields go. */
export function withoutOwnFacts<T extends object>(pack: T): Omit<T, keyof OwnFacts> {
  if (!PACK.some(field => Object.hasOwn(pack, field))) return pack
  const rest: Partial<Record<keyof OwnFacts, unknown>> & T = { ...pack }
  for (const field of PACK) delete rest[field]
  return rest
}

/** Checks each own fact of a pack of unknown origin; the names of those that are none. */
export function badOwnFacts(pack: object): (keyof OwnFacts)[] {
  const facts = pack as Record<keyof OwnFacts, unknown>
  return PACK.filter(field => Object.hasOwn(pack, field) && !IS_SOUND[field](facts[field]))
}

/** Longer notes and lists of words were typed by nobody. */
export const OWN_CAPS = { notesChars: 5000, tags: 30, tagChars: 200 } as const

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
