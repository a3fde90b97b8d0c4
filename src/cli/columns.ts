// Rows of words as aligned columns, and lines that end before column 78.

/** Each row as a line, its cells as wide as the widest of their column. */
export function aligned(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map(row => row[column]?.length ?? 0)))
  return rows.map(row =>
    row
      .map((cell, i) => cell.padEnd(widths[i]!))
      .join('  ')
      .trimEnd(),
  )
}

/** Breaks a line at spaces before column 78; lines after the first are indented. */
export function wrap(line: string, indent: number): string[] {
  const lines: string[] = []
  let rest = line
  while (rest.length > 78) {
    const at = rest.lastIndexOf(' ', 78)
    if (at <= indent) break
    lines.push(rest.slice(0, at))
    rest = ' '.repeat(indent) + rest.slice(at + 1)
  }
  return [...lines, rest]
}
