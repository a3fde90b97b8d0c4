// The worker that reads plans and backups, so that a large file never holds up the page. One file, then it is ended.

import { lookAt } from '../../files/backup'
import { whenAsked } from '../../files/worker'
import { readRecord, TRIP } from '../record-kinds'
import { type LookAsked, type LookTold, messagesOf } from './messages'

export const address = import.meta.url

whenAsked<LookAsked>('look', ({ file }) => {
  // A fault of ours must reach the page as the worker's error, not vanish in a promise.
  void answer(file).catch(error => reportError(error))
})

const TELL_EVERY_MS = 1000

async function answer(file: File) {
  const tell = (told: LookTold) => postMessage(told)
  let told = performance.now()
  const looked = await lookAt(file, record => {
    if (performance.now() - told > TELL_EVERY_MS) {
      tell({ kind: 'reading' })
      told = performance.now()
    }
    return readRecord(TRIP, record)
  })
  for (const portion of messagesOf(looked)) tell(portion)
}
