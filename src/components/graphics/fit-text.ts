// Text that has to fit a drawing: cut with an ellipsis, or broken into lines, by a given measure of its width.

/** Width of a text in px. */
export type Measure = (text: string) => number

/** A guess for where nothing can be measured: wide enough for most scripts at most widths. */
export const guessWidth =
  (emPx: number): Measure =>
  text =>
    [...text].length * 0.6 * emPx

/** The text, or as much of its beginning as fits `widthPx` with an ellipsis; never cuts a character in two. */
export function cut(text: string, widthPx: number, measure: Measure): string {
  if (measure(text) <= widthPx) return text
  const characters = [...text]
  let fits = 0
  let over = characters.length
  while (over - fits > 1) {
    const middle = (fits + over) >> 1
    if (measure(`${characters.slice(0, middle).join('').trimEnd()}…`) <= widthPx) fits = middle
    else over = middle
  }
  return `${characters.slice(0, fits).join('').trimEnd()}…`
}

/** The text broken at spaces into lines of at most `widthPx`; a word wider than that has a line of its own. */
export function wrap(text: string, widthPx: number, measure: Measure): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const joined = lines.length > 0 ? `${lines.at(-1)} ${word}` : word
    if (lines.length > 0 && measure(joined) <= widthPx) lines[lines.length - 1] = joined
    else lines.push(word)
  }
  return lines
}
