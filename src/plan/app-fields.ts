// What only the app knows of an item, a pack and a trip: no part of a plan, and so of no plan file.

const ITEM = ['shelf', 'litresPerKg', 'swaps'] as const
/** The names of a pack's own facts. */
export const OWN_FACTS = ['has', 'starred', 'aside', 'notes', 'tags'] as const

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
  const { shelf: _shelf, litresPerKg: _litresPerKg, swaps: _swaps, ...rest } = item
  return rest
}

/** The pack as a plan holds it, as far as its own fields go. */
export function withoutOwnFacts<T extends object>(pack: T): Omit<T, keyof OwnFacts> {
  if (!OWN_FACTS.some(field => Object.hasOwn(pack, field))) return pack
  const rest: Partial<Record<keyof OwnFacts, unknown>> & T = { ...pack }
  for (const field of OWN_FACTS) delete rest[field]
  return rest
}
