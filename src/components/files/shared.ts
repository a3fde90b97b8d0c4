// What another app has shared with this one. The service worker has put it aside and sent the page to `?received`
// (vite.config.ts); it is taken from there once, and the address says nothing of it any more.

import { RECEIVED_CACHE, within } from '../../store'

const ANSWER_MS = 5000

export async function takeShared(): Promise<File[]> {
  const { pathname, search, hash } = location
  if (!/^\?received\b/.test(search)) return []
  history.replaceState(history.state, '', pathname + hash)
  try {
    if (search !== '?received') throw new Error(search)
    return await within(taken(), ANSWER_MS)
  } catch {
    // Whatever it was, an empty file says that it did not arrive.
    return [new File([], 'What was shared')]
  }
}

async function taken(): Promise<File[]> {
  const aside = await caches.open(RECEIVED_CACHE)
  const answers = await Promise.all((await aside.keys()).map(request => aside.match(request)))
  const files = await Promise.all(answers.flatMap(answer => (answer ? fileOf(answer) : [])))
  await caches.delete(RECEIVED_CACHE)
  return files
}

async function fileOf(answer: Response): Promise<File> {
  const name = decodeURIComponent(answer.headers.get('X-Name') ?? '') || 'Shared file'
  return new File([await answer.blob()], name)
}
