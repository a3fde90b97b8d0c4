// Whether a text would keep the CSV reader busy for minutes. For each quote inside a quoted cell that neither closes it
// nor is doubled, papaparse 5.7.1 trims all that follows up to the next separator and line end (`extraSpaces`): its time
// grows with such quotes times blanks. Measured: 192 kB made so took 22 s. Counted here in one pass over the text.

import { TABLE_CAPS } from './limits'

/** Whether the quotes and blanks of a text, read with this separator, exceed what is read in about a second. */
export function hasSlowQuotes(text: string, separator: string): boolean {
  let quotes = 0
  let longest = 0
  let blanks = 0
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    if (code === QUOTE && !ENDS.has(text[i + 1]) && text[i + 1] !== separator) quotes++
    const isBlank = (code <= 32 || code >= 160) && code !== CR && code !== LF && text[i] !== separator
    if (isBlank && text[i]!.trim() === '') {
      blanks++
      if (blanks > longest) longest = blanks
    } else blanks = 0
  }
  return quotes * Math.max(longest, FEW_BLANKS) > TABLE_CAPS.slowQuotes
}

/** Quotes alone cost too: each that closes nothing is reported. */
const FEW_BLANKS = 50
const QUOTE = 34
const CR = 13
const LF = 10
const ENDS: ReadonlySet<string | undefined> = new Set(['"', '\r', '\n', undefined])
