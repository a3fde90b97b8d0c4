// Whether two values hold the same, whatever the order of their keys.

/** Whether two values in a field of this name, of which one at least is no object, mean the same. */
type Alike = (a: unknown, b: unknown, field: string) => boolean

/** Deep equality of plain values; a key that holds undefined counts as absent. */
export function same(a: unknown, b: unknown, alike: Alike = Object.is, field = ''): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return alike(a, b, field)
  if (Array.isArray(a) || Array.isArray(b)) {
    const bothLists = Array.isArray(a) && Array.isArray(b) && a.length === b.length
    return bothLists && a.every((entry, i) => same(entry, b[i], alike))
  }
  const [one, other] = [a, b] as Record<string, unknown>[]
  const keys = new Set([...Object.keys(one!), ...Object.keys(other!)])
  return [...keys].every(key => same(own(one!, key), own(other!, key), alike, key))
}

const own = (of: Record<string, unknown>, key: string) => (Object.hasOwn(of, key) ? of[key] : undefined)
