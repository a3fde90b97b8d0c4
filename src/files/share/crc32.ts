// The check sum that tells a link changed on its way from one that arrived whole: raw deflate has none of its own.
// CRC-32 as gzip uses it (RFC 1952, section 8): reflected, polynomial 0xEDB88320.

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1
  return value
})

/** A whole number from 0 to 2^32 - 1. */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff
  for (const byte of bytes) value = (value >>> 8) ^ TABLE[(value ^ byte) & 0xff]!
  return ~value >>> 0
}
