// Plain values as trips and the shelf hold them: objects of named parts, and lists of things with ids.

export interface WithId {
  id: string
}

export const isBranch = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const isThings = (value: unknown): value is WithId[] =>
  Array.isArray(value) && value.every(entry => isBranch(entry) && typeof entry.id === 'string')

export const own = (of: Record<string, unknown>, name: string) =>
  Object.hasOwn(of, name) ? of[name] : undefined

export const byId = <T extends WithId>(list: readonly T[]) => new Map(list.map(thing => [thing.id, thing]))
