// JSON that anybody may have written, refused by how much it holds before it is made into values: a text of 30 MB may be
// ten million lists, more than a phone has room for.

import { BACKUP_CAPS } from './limits'

export type Json = { ok: true; value: unknown } | { ok: false; message: string }

const refuse = (message: string): Json => ({ ok: false, message })

/**
 * Gives what `JSON.parse` gives. Refuses, with a sentence, what is no JSON and what nests deeper, has longer lists or more
 * values than `BACKUP_CAPS` allow. Never throws.
 */
export function parseJson(file: string): Json {
  const text = file.startsWith('\uFEFF') ? file.slice(1) : file
  const tooMuch = tooMuchIn(text)
  if (tooMuch) return refuse(tooMuch)
  try {
    return { ok: true, value: JSON.parse(text) }
  } catch {
    const isWhole = /[}\]]\s*$/.test(text.slice(-100))
    return refuse(
      isWhole
        ? 'The file is damaged: somewhere inside, its text is not what the app writes. Look for another copy of it.'
        : 'The file was cut short: its end is missing. Copy or download it once more, or look for another copy.',
    )
  }
}

/** Why the text holds too much, going by its brackets and commas; null where it does not, whether it is JSON or not. */
function tooMuchIn(text: string): string | null {
  /** How many entries each list and object has so far that is open, outermost first. */
  const entries: number[] = []
  let values = 0
  for (let at = 0; at < text.length; at++) {
    const mark = text[at]
    if (mark === '"') {
      at = endOfString(text, at)
    } else if (mark === '[' || mark === '{') {
      values += 1
      if (entries.push(1) > BACKUP_CAPS.depth)
        return `The file is nested deeper than ${BACKUP_CAPS.depth} levels, which no plan or backup is.`
    } else if (mark === ']' || mark === '}') {
      entries.pop()
    } else if (mark === ',') {
      values += 1
      const inThis = (entries.pop() ?? 0) + 1
      entries.push(inThis)
      if (inThis > BACKUP_CAPS.entries || values > BACKUP_CAPS.values)
        return 'The file holds more entries than any plan or backup has: it is damaged, or of another program. Look for another copy of it.'
    }
  }
  return null
}

/** Where the string ends that begins at `at`; the end of the text where it does not. */
function endOfString(text: string, at: number): number {
  for (let end = at; ; ) {
    end = text.indexOf('"', end + 1)
    if (end < 0) return text.length
    let slashes = 0
    while (text[end - 1 - slashes] === '\\') slashes += 1
    if (slashes % 2 === 0) return end
  }
}
