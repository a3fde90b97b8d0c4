// One text for the same contents, and its hash: by these two places hold the same, or do not.

/** The text of things in lists, so that of thousands only those that have changed are written out anew. */
const texts = new WeakMap<object, string>()

/** JSON with the keys of every object in order: the same contents give the same text. The value is not changed later. */
export function canonical(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  if (Array.isArray(value)) return `[${value.map(remembered).join(',')}]`
  const entries = Object.entries(value).filter(([, child]) => child !== undefined)
  entries.sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${entries.map(([key, child]) => `${JSON.stringify(key)}:${canonical(child)}`).join(',')}}`
}

/** As `canonical`; of long lists a few hundred entries at a time, so that typing goes on meanwhile. */
export async function canonicalInTurns(record: object): Promise<string> {
  let made = 0
  for (const entry of listsIn(record).flat()) {
    if (typeof entry !== 'object' || entry === null || texts.has(entry)) continue
    remembered(entry)
    made += 1
    if (made % 250 === 0) await new Promise(resolve => setTimeout(resolve))
  }
  return canonical(record)
}

/** The lists of a record: those of the shelf, and of the draft in a trip. */
const listsIn = (record: object, depth = 3): unknown[][] =>
  Object.values(record).flatMap(child => {
    if (Array.isArray(child)) return [child]
    return typeof child === 'object' && child !== null && depth > 1 ? listsIn(child, depth - 1) : []
  })

function remembered(value: unknown): string {
  if (typeof value !== 'object' || value === null) return canonical(value)
  const text = texts.get(value) ?? canonical(value)
  texts.set(value, text)
  return text
}

/** SHA-256 of a text, of one as a file or of bytes, in 64 hexadecimal digits. */
export async function sha256(text: string | Blob | Uint8Array<ArrayBuffer>): Promise<string> {
  const encoded =
    typeof text === 'string'
      ? new TextEncoder().encode(text)
      : text instanceof Blob
        ? await text.arrayBuffer()
        : text
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', encoded))
  return Array.from(bytes, byte => byte.toString(16).padStart(2, '0')).join('')
}
