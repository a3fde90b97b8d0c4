// What a worker's module does with what it is asked, and nothing where a page imports it for its address.

/** Several modules may share a file, so each answers what is of its own kind alone. */
export function whenAsked<Asked extends { kind: string }>(
  kind: Asked['kind'],
  answer: (asked: Asked) => void,
): void {
  if ('document' in globalThis) return
  // Only the page that started it can write to a worker of its own.
  addEventListener('message', ({ data }: MessageEvent<Asked>) => {
    if (data?.kind === kind) answer(data)
  })
}
