// One line into its cells: by tab, semicolon, stroke or comma, with quotes as spreadsheets write them. A comma between
// two digits is a decimal mark unless the list's first line says that commas part the columns.

export type Separator = '\t' | ';' | '|' | ','

/** What parts the cells of a line; a comma where nothing else does. */
export const separatorOf = (line: string): Separator =>
  (['\t', ';', '|'] as const).find(mark => line.includes(mark)) ?? ','

/** The cells of a line, trimmed, empty ones kept. `decimalCommas`: a comma between digits does not part. */
export function cellsOf(
  line: string,
  separator: Separator,
  { decimalCommas }: { decimalCommas: boolean },
): string[] {
  const cells: string[] = []
  let cell = ''
  let quoted = false
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!
    if (quoted && c === '"' && line[i + 1] === '"') {
      cell += c
      i++
    } else if (c === '"' && (quoted || (cell.trim() === '' && closes(line, i, separator)))) {
      quoted = !quoted
    } else if (!quoted && c === separator && !(decimalCommas && c === ',' && isBetweenDigits(line, i))) {
      cells.push(cell.trim())
      cell = ''
    } else cell += c
  }
  return [...cells, cell.trim()]
}

/** Whether a quote opened at `at` ends a cell further on: otherwise it is an inch mark or a slip, and stays. */
function closes(line: string, at: number, separator: Separator): boolean {
  for (let end = line.indexOf('"', at + 1); end >= 0; end = line.indexOf('"', end + 1)) {
    if (line[end + 1] === '"') end++
    else
      return (
        line.slice(end + 1).trimStart() === '' ||
        line
          .slice(end + 1)
          .trimStart()
          .startsWith(separator)
      )
  }
  return false
}

const isBetweenDigits = (line: string, at: number) =>
  /\d/.test(line[at - 1] ?? '') && /\d/.test(line[at + 1] ?? '')
