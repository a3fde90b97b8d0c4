// JSON of any size, parsed piece by piece, so that whoever drives it may let others go first in between; and refused by
// how much it holds before it is made into values: a text of 30 MB may be ten million lists.

import { BACKUP_CAPS } from './limits'

export type Json = { ok: true; value: unknown } | { ok: false; message: string }

const refuse = (message: string): Json => ({ ok: false, message })

/** Characters that are parsed, or looked at, in one go: a few milliseconds. */
const PIECE_CHARS = 65_536

const QUOTE = 0x22
const COMMA = 0x2c
const BACKSLASH = 0x5c
const OPEN_LIST = 0x5b
const CLOSE_LIST = 0x5d
const OPEN_OBJECT = 0x7b
const CLOSE_OBJECT = 0x7d

/** A list or an object that is being looked at. */
interface Frame {
  isList: boolean
  /** Where its bracket stands. */
  start: number
  /** Where its first member begins that has not been made into a value. */
  from: number
  /** Where the member begins that is being looked at. */
  member: number
  members: number
  /** What of it has been made; null while all of it may still be parsed with what surrounds it. */
  made: unknown[] | object | null
  /** Whether the last member was made by itself: only a comma or the end may follow. */
  ended: boolean
}

/**
 * Gives what `JSON.parse` gives, a slice at a time. Refuses, with a sentence, what is no JSON and what nests deeper, has
 * longer lists or more values than `BACKUP_CAPS` allow. Never throws.
 */
export function* parsingJson(file: string): Generator<void, Json> {
  const text = file.startsWith('\uFEFF') ? file.slice(1) : file
  try {
    return yield* parsing(text)
  } catch {
    // JSON.parse has refused a piece, or the pieces do not fit together.
    const isWhole = /[}\]]\s*$/.test(text.slice(-100))
    return refuse(
      isWhole
        ? 'The file is damaged: somewhere inside, its text is not what the app writes. Look for another copy of it.'
        : 'The file was cut short: its end is missing. Copy or download it once more, or look for another copy.',
    )
  }
}

function* parsing(text: string): Generator<void, Json> {
  const frames: Frame[] = []
  let values = 0
  let rested = 0
  for (let at = 0; at < text.length; at++) {
    const top = frames.at(-1)
    const code = text.charCodeAt(at)
    if (code === QUOTE) at = endOfString(text, at)
    else if (code === OPEN_LIST || code === OPEN_OBJECT) {
      values += 1
      if (frames.push(opened(at, code === OPEN_LIST)) > BACKUP_CAPS.depth)
        return refuse(`The file is nested deeper than ${BACKUP_CAPS.depth} levels, which no backup is.`)
    } else if (code === COMMA) {
      if (!top) return brokenOff()
      top.members += 1
      values += 1
      if (top.members > BACKUP_CAPS.entries || values > BACKUP_CAPS.values) return refuse(TOO_MANY)
      if (top.ended || at - top.from > PIECE_CHARS) take(top, text, at)
      top.member = at + 1
    } else if (code === CLOSE_LIST || code === CLOSE_OBJECT) {
      if (top?.isList !== (code === CLOSE_LIST)) return brokenOff()
      frames.pop()
      if (top.made) {
        take(top, text, at)
        const around = frames.at(-1)
        if (around) attach(around, top, text, at)
        else if (isBlank(text, 0, top.start) && isBlank(text, at + 1)) return { ok: true, value: top.made }
        else return brokenOff()
      }
    }
    if (at - rested > PIECE_CHARS) {
      rested = at
      yield
    }
  }
  // No part of it was long: but for long words, it is one piece.
  return { ok: true, value: JSON.parse(text) }
}

const opened = (start: number, isList: boolean): Frame => ({
  isList,
  start,
  from: start + 1,
  member: start + 1,
  members: 1,
  made: null,
  ended: false,
})

const TOO_MANY =
  'The file holds more entries than any plan or backup has: it is damaged, or of another program. Look for another copy of it.'

function brokenOff(): never {
  throw new SyntaxError('the text ends too early or too late')
}

/** Where the string ends that begins at `at`. */
function endOfString(text: string, at: number): number {
  for (let end = at; ; ) {
    end = text.indexOf('"', end + 1)
    if (end < 0) return brokenOff()
    let slashes = 0
    while (text.charCodeAt(end - 1 - slashes) === BACKSLASH) slashes += 1
    if (slashes % 2 === 0) return end
  }
}

/** Makes values of the members up to `to`, where a comma or the end stands. */
function take(frame: Frame, text: string, to: number) {
  if (!frame.ended) add(frame, text.slice(frame.from, to))
  else if (!isBlank(text, frame.from, to)) brokenOff()
  frame.ended = false
  frame.from = to + 1
}

function add(frame: Frame, members: string) {
  if (isBlank(members)) brokenOff()
  if (frame.isList) {
    const made = listOf(frame)
    for (const member of JSON.parse(`[${members}]`)) made.push(member)
  } else for (const [key, value] of Object.entries(JSON.parse(`{${members}}`))) own(frame, key, value)
}

/** Puts a member that was made by itself, and ends at `end`, into what surrounds it. */
function attach(frame: Frame, member: Frame, text: string, end: number) {
  if (frame.ended) brokenOff()
  if (frame.from < frame.member) add(frame, text.slice(frame.from, frame.member - 1))
  const before = text.slice(frame.member, member.start)
  if (!frame.isList) own(frame, Object.keys(JSON.parse(`{${before}[]}`))[0]!, member.made)
  else if (isBlank(before)) listOf(frame).push(member.made)
  else brokenOff()
  frame.ended = true
  frame.from = end + 1
}

function listOf(frame: Frame): unknown[] {
  frame.made ??= []
  return frame.made as unknown[]
}

/** As JSON.parse does it: "__proto__" is a key like any other. */
function own(frame: Frame, key: string, value: unknown) {
  frame.made ??= {}
  Object.defineProperty(frame.made, key, { value, configurable: true, enumerable: true, writable: true })
}

/** Blanks as JSON knows them. */
const isBlank = (text: string, from = 0, to = text.length) => /^[ \t\n\r]*$/.test(text.slice(from, to))
