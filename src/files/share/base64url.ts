// Bytes as text that is safe in a link: base64 with "-" and "_" and without padding (RFC 4648, section 5).

/** The bytes as letters, digits, "-" and "_". */
export function toBase64url(bytes: Uint8Array): string {
  const binary = Array.from(bytes, byte => String.fromCharCode(byte)).join('')
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

/** The bytes again; null where the text holds anything else or has a length that no bytes give. */
export function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null
  return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), char => char.charCodeAt(0))
}
