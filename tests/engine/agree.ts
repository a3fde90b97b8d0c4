// Compares what the engine says with what another reckoning says, number by number, and names where they part.

/** Paths at which `got` differs from `expected`; fields that only `got` has are not looked at. */
export function differences(
  got: unknown,
  expected: unknown,
  { relative = 1e-9, path = '' }: { relative?: number; path?: string } = {},
): string[] {
  if (typeof expected === 'number' && typeof got === 'number') {
    const room = relative * Math.max(Math.abs(got), Math.abs(expected)) + 1e-12
    return Math.abs(got - expected) <= room ? [] : [`${path}: ${got}, expected ${expected}`]
  }
  if (typeof expected !== 'object' || expected === null)
    return Object.is(got, expected) ? [] : [`${path}: ${String(got)}, expected ${String(expected)}`]
  if (typeof got !== 'object' || got === null) return [`${path}: ${String(got)}, expected an object`]
  const lengths =
    Array.isArray(expected) && Array.isArray(got) && got.length !== expected.length
      ? [`${path}: ${got.length} entries, expected ${expected.length}`]
      : []
  return [
    ...lengths,
    ...Object.entries(expected).flatMap(([key, value]) =>
      differences((got as Record<string, unknown>)[key], value, { relative, path: `${path}.${key}` }),
    ),
  ]
}
