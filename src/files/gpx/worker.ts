// The worker that reads GPX files, so that a long track never holds up the page. One file, then it is ended.

import { whenAsked } from '../worker'
import { measureGpx } from './job'
import { isReadRequest, type ReadRequest } from './request'
import type { GpxMeasured } from './types'

export const address = import.meta.url

whenAsked<ReadRequest>('read', asked => {
  if (!isReadRequest(asked)) return
  // A fault of ours must reach the page as the worker's error, not vanish in a promise.
  void answer(asked.file).catch(error => reportError(error))
})

async function answer(file: Blob) {
  let told = 0
  const result = await measureGpx(file, {
    onProgress: share => {
      if (share < 1 && share - told < 0.01) return
      told = share
      postMessage({ kind: 'progress', share })
    },
  })
  postMessage({ kind: 'done', result }, { transfer: buffersOf(result) })
}

const buffersOf = (result: GpxMeasured): ArrayBufferLike[] =>
  result.ok ? result.tracks.flatMap(({ sums }) => Object.values(sums).map(each => each.buffer)) : []
