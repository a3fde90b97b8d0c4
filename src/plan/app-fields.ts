// What only the app knows of an item: no part of a plan, and so of no plan file.

const NAMES = ['shelf', 'litresPerKg'] as const

export type AppField = (typeof NAMES)[number]

export const APP_FIELDS: ReadonlySet<string> = new Set(NAMES)

/** The item as a plan holds it. */
export function withoutAppFields<T extends { [field in AppField]?: unknown }>(item: T): Omit<T, AppField> {
  const { shelf: _shelf, litresPerKg: _litresPerKg, ...rest } = item
  return rest
}
