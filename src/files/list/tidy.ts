// A name without what the amounts leave behind.

const LEFT_OVER = /[\s\-–—:=~≈@,;/|…]/

/** Without empty brackets, dashes and marks at its ends, double spaces. */
export function tidy(name: string): string {
  const single = name
    .replace(/\s+/g, ' ')
    .replace(/\( ?\)|\[ ?\]/g, ' ')
    .replace(/ +/g, ' ')
  let from = 0
  let to = single.length
  while (from < to && (single[from] === '.' || LEFT_OVER.test(single[from]!))) from++
  while (to > from && LEFT_OVER.test(single[to - 1]!)) to--
  return single.slice(from, to).replace(/(?<=\p{L}{2})\.$/u, '')
}
