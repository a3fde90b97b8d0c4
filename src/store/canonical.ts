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
  for (const list of Object.values(record)) {
    if (!Array.isArray(list)) continue
    for (let at = 0; at < list.length; at += 250) {
      const isNew = list.slice(at, at + 250).map(entry => {
        const known = typeof entry !== 'object' || entry === null || texts.has(entry)
        if (!known) remembered(entry)
        return !known
      })
      if (isNew.includes(true)) await new Promise(resolve => setTimeout(resolve))
    }
  }
  return canonical(record)
}

function remembered(value: unknown): string {
  if (typeof value !== 'object' || value === null) return canonical(value)
  const text = texts.get(value) ?? canonical(value)
  texts.set(value, text)
  return text
}

/** SHA-256 of a text, in 64 hexadecimal digits. */
export async function sha256(text: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)))
  return Array.from(bytes, byte => byte.toString(16).padStart(2, '0')).join('')
}
