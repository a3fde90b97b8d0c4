// A table for a terminal: columns as wide as what is in them.

export function printTable(header: readonly string[], rows: readonly (readonly string[])[]) {
  const widths = header.map((title, column) =>
    Math.max(title.length, ...rows.map(row => row[column]!.length)),
  )
  for (const row of [header, ...rows]) {
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column]!))
        .join('  ')
        .trimEnd(),
    )
  }
}
