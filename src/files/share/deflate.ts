// Packing and unpacking with the browser's own deflate. Unpacking counts as it goes and stops at a cap, so that a few
// bytes which unpack to gigabytes cost no more than the cap.

/** Packs bytes with raw deflate. Throws where the browser has none (`canSqueeze`). */
export async function deflate(bytes: Bytes): Promise<Uint8Array<ArrayBuffer>> {
  const packed = through(bytes, new CompressionStream('deflate-raw'))
  return new Uint8Array(await new Response(packed).arrayBuffer())
}

export type Unpacked =
  | { ok: true; bytes: Uint8Array<ArrayBuffer> }
  | { ok: false; because: 'damaged' | 'too-large' }

/** Unpacks raw deflate to at most `capBytes`. Throws only where the browser has no deflate (`canSqueeze`). */
export async function inflate(bytes: Uint8Array<ArrayBuffer>, capBytes: number): Promise<Unpacked> {
  const reader = through(bytes, new DecompressionStream('deflate-raw')).getReader()
  const chunks: Uint8Array<ArrayBuffer>[] = []
  let total = 0
  try {
    for (;;) {
      const { done, value } = await reader.read()
      if (done) return { ok: true, bytes: joined(chunks, total) }
      total += value.byteLength
      if (total > capBytes) {
        // Not awaited: what stopping has to say no longer matters, and some streams never answer it.
        reader.cancel().catch(() => undefined)
        return { ok: false, because: 'too-large' }
      }
      chunks.push(value)
    }
  } catch {
    // The stream fails in no other way than on bytes that are not deflate.
    return { ok: false, because: 'damaged' }
  }
}

/** Whether this browser can pack and unpack. */
export function canDeflate(): boolean {
  try {
    return Boolean(new CompressionStream('deflate-raw') && new DecompressionStream('deflate-raw'))
  } catch {
    // Either the classes are missing or they do not know this format: in both cases it cannot.
    return false
  }
}

type Bytes = Uint8Array<ArrayBuffer> | Blob

function through(bytes: Bytes, by: CompressionStream | DecompressionStream) {
  return new Blob([bytes]).stream().pipeThrough(by)
}

function joined(chunks: Uint8Array[], total: number): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(total)
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.byteLength
  }
  return all
}
