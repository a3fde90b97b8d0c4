// Whether a table writes decimals with a comma or a point, and its numbers in one spelling. Only a number with one mark
// before exactly three digits can be read both ways: 1,234 and 1.234. The others are read as they stand.

export type Decimal = '.' | ','

const NUMBER = /\d[\d.,'’\s]*\d|\d/gu

/** What the cells' clear numbers say; where none is clear, a table parted by semicolons has decimal commas. */
export function guessDecimal(cells: readonly string[], separator: string): Decimal {
  let commas = 0
  let unclear = 0
  for (const cell of cells) {
    for (const [number] of cell.matchAll(NUMBER)) {
      const last = /([.,])(\d+)$/.exec(number)
      if (!last) continue
      const [, mark, after] = last
      const before = number.slice(0, last.index)
      const isClear = after!.length !== 3 || /[.,]/.test(before.replaceAll(mark!, '')) || before === '0'
      const repeats = before.includes(mark!)
      if (repeats) commas += mark === '.' ? 1 : -1
      else if (isClear) commas += mark === ',' ? 1 : -1
      else unclear++
    }
  }
  if (commas !== 0) return commas > 0 ? ',' : '.'
  return separator === ';' && unclear > 0 ? ',' : '.'
}

/** A cell's text with its numbers so that a point is the decimal mark and nothing groups the digits. */
export function withPoints(text: string, decimal: Decimal): string {
  const group = decimal === ',' ? '.' : ','
  const grouped = new RegExp(String.raw`(?<![\d.,])[1-9]\d{0,2}(?:[${group}]\d{3})+(?![\d${group}])`, 'g')
  const ungrouped = text.replace(grouped, number => number.replaceAll(group, ''))
  return decimal === ',' ? ungrouped.replace(/(?<=\d),(?=\d)/g, '.') : ungrouped
}
