// Bytes to text, piece by piece: finds the encoding, and lets no document type or entity through to the parser.
// Byte-order marks and the XML declaration: XML 1.0, appendix F (from memory).

import { refusal } from './refuse'

export interface TextReader {
  /** The text of these bytes; the first piece must hold the head of the file. Throws a refusal. */
  read(bytes: Uint8Array): string
  /** Whether the bytes end inside a character. */
  endsInCharacter(): boolean
}

export function createTextReader(): TextReader {
  let decoder: TextDecoder | null = null
  let tail = ''

  function decode(bytes?: Uint8Array): string {
    try {
      return decoder ? decoder.decode(bytes, { stream: bytes !== undefined }) : ''
    } catch (error) {
      if (!(error instanceof TypeError)) throw error
      throw refusal(
        `The file is marked as ${decoder?.encoding.toUpperCase()} text but holds other bytes: save it as UTF-8 text, or export it again.`,
      )
    }
  }

  return {
    read(bytes) {
      decoder ??= decoderFor(bytes)
      const text = decode(bytes)
      guard(tail + text)
      tail = (tail + text).slice(-MARK_LENGTH)
      return text
    },
    endsInCharacter() {
      try {
        decode()
        return false
      } catch {
        return true
      }
    },
  }
}

const DECLARATION = /<!\s*(doctype|entity)/i
/** As much of the piece before as the start of a declaration may hide in. */
const MARK_LENGTH = 32

function guard(text: string) {
  const declaration = DECLARATION.exec(text)
  if (!declaration) return
  if (/^<!\s*doctype\s+html/i.test(text.slice(declaration.index, declaration.index + 40)))
    throw refusal(
      'This is a web page, not a GPX file: use the page’s own download or export, and choose that file.',
    )
  throw refusal(
    `The file declares a document type or an entity (${declaration[0].toUpperCase()}), which GPX has no use for and which can hide harm: export it again as plain GPX, or delete the declaration.`,
  )
}

function decoderFor(head: Uint8Array): TextDecoder {
  if (startsWith(head, [0x50, 0x4b, 3, 4]) || startsWith(head, [0x1f, 0x8b]))
    throw refusal('This file is packed (zip or gzip): unpack it and choose the .gpx file inside.')
  const label = encodingOf(head)
  try {
    return new TextDecoder(label, { fatal: true })
  } catch {
    throw refusal(
      `The file says that it is written in "${label}", which cannot be read here: save it as UTF-8.`,
    )
  }
}

/** A byte-order mark counts more than what the declaration says; without either it is UTF-8. */
function encodingOf(head: Uint8Array): string {
  if (startsWith(head, [0xef, 0xbb, 0xbf])) return 'utf-8'
  if (startsWith(head, [0xff, 0xfe]) || startsWith(head, [0x3c, 0, 0x3f, 0])) return 'utf-16le'
  if (startsWith(head, [0xfe, 0xff]) || startsWith(head, [0, 0x3c, 0, 0x3f])) return 'utf-16be'
  const line = String.fromCharCode(...head.subarray(0, 200))
  const declared =
    /^<\?xml[^>]{0,150}?encoding\s*=\s*["']([A-Za-z][\w.-]{0,40})["']/.exec(line)?.[1] ?? 'utf-8'
  // Text that could be read this far as single bytes is not UTF-16, whatever it says.
  return /^utf-?16/i.test(declared) ? 'utf-8' : declared
}

const startsWith = (bytes: Uint8Array, mark: number[]) => mark.every((byte, i) => bytes[i] === byte)
