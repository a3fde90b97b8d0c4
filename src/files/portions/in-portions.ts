// Long work step by step: in portions, so that the page answers in between, or in one go.

/** A result, after steps that give nothing. */
export type Steps<T> = Generator<undefined, T>

/** A portion ends with the step that takes it beyond this. */
const PORTION_MS = 30
/** As much text as is encoded at once. */
const ENCODED_CHARS = 100_000

/** Does all steps of the work, which begins at once; the page has its turn whenever a portion is done. Rejects as the work throws. */
export async function inPortions<T>(work: Steps<T>): Promise<T> {
  let since = performance.now()
  for (;;) {
    const { done, value } = work.next()
    if (done) return value
    if (performance.now() - since < PORTION_MS) continue
    await new Promise(resolve => setTimeout(resolve))
    since = performance.now()
  }
}

/** Begins the work in portions; `done` hears what comes of it, unless what is given back has stopped it before. */
export function beginInPortions<T>(work: Steps<T>, done: (result: T) => void): () => void {
  let isStopped = false
  void inPortions(work).then(result => isStopped || done(result))
  return () => {
    isStopped = true
    work.return(undefined as never)
  }
}

/** All steps at once. */
export function inOneGo<T>(work: Steps<T>): T {
  for (;;) {
    const { done, value } = work.next()
    if (done) return value
  }
}

/** The text of these pieces as a file in UTF-8, written in portions. */
export const fileOf = (pieces: Iterable<string>): Promise<Blob> => inPortions(encoding(pieces))

function* encoding(pieces: Iterable<string>): Steps<Blob> {
  const encoded: Blob[] = []
  let next: string[] = []
  let chars = 0
  for (const piece of pieces) {
    next.push(piece)
    chars += piece.length
    if (chars >= ENCODED_CHARS) {
      encoded.push(new Blob(next))
      next = []
      chars = 0
    }
    yield
  }
  return new Blob([...encoded, ...next], { type: 'application/json' })
}
