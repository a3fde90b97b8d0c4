// Text that depends on the contents alone.

/** JSON with the keys of every object in order: the same contents give the same text. */
export const canonical = (value: unknown, space?: number): string => JSON.stringify(value, sorted, space)

const sorted = (_: string, value: unknown) =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value
