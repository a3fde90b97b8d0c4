// What the page asks of its worker: read this file. Apart from messages.ts, so that the worker needs no schema library.

export interface ReadRequest {
  kind: 'read'
  file: Blob
}

export function isReadRequest(message: unknown): message is ReadRequest {
  if (typeof message !== 'object' || message === null) return false
  const { kind, file } = message as Partial<ReadRequest>
  return kind === 'read' && file instanceof Blob
}
