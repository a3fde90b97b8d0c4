// The bytes of a table as text. A byte order mark decides; without one it is UTF-8 if the bytes are that without a
// fault, else Windows-1252, which older spreadsheets write. The reader is told which, and may choose another.

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'

export const ENCODINGS: readonly { value: Encoding; label: string }[] = [
  { value: 'utf-8', label: 'UTF-8' },
  { value: 'utf-16le', label: 'UTF-16, little end first' },
  { value: 'utf-16be', label: 'UTF-16, big end first' },
  { value: 'windows-1252', label: 'Windows-1252 (Western)' },
]

// Byte order marks as the Encoding Standard has them (from memory).
const MARKS: readonly (readonly [Encoding, readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
]

export interface Decoded {
  text: string
  encoding: Encoding
}

/** The text of the bytes, without its byte order mark. Never throws: what is no character becomes U+FFFD. */
export function decodeTable(bytes: Uint8Array, chosen?: Encoding): Decoded {
  const marked = MARKS.find(([, mark]) => mark.every((byte, i) => bytes[i] === byte))?.[0]
  const encoding = chosen ?? marked ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252')
  return { text: new TextDecoder(encoding).decode(bytes), encoding }
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    // The one thing it throws for is a byte that UTF-8 has not: that is the answer.
    return false
  }
}
