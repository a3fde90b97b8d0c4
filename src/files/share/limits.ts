// What a shared link and a code may hold, declared once for maker, reader, messages and tests. The ends are judgements
// of ours: browsers take far longer fragments, but programs that pass links on cut them, and cameras lose fine codes.

export const SHARE_CAPS = {
  /** The part of a link after its "#"; a longer one is neither made nor read. */
  fragmentChars: 8000,
  /** A whole link up to this goes through most programs that pass links on. */
  easyLinkChars: 2000,
  /** What the plan in a link may come to when it is unpacked. */
  unpackedBytes: 256 * 1024,
  /** A whole link in one code. */
  codeBytes: 1200,
} as const
