// How long a track of 100,000 points takes to read and measure: `npx tsx tests/bench/gpx.ts [points]`.
// Prints times, judges nothing: a phone takes several times as long as a desktop.

import { readGpx } from '../../src/files/gpx/read'
import { measureFile } from '../../src/files/gpx/track'
import { walk } from '../files/tracks'

const points = Number(process.argv[2] ?? 100_000)
const file = new Blob([walk({ points, spacingM: 8, noiseM: 3 })])
console.log(`${points} points, ${(file.size / 1e6).toFixed(1)} MB`)

for (const run of [1, 2, 3]) {
  const start = performance.now()
  const read = await readGpx(file)
  const readMs = performance.now() - start
  if (!read.ok) throw new Error(read.message)
  const measured = measureFile(read.file)
  const measureMs = performance.now() - start - readMs
  if (!measured.ok) throw new Error(measured.message)
  const { km, sums } = measured.tracks[0]!
  console.log(
    `run ${run}: read ${readMs.toFixed(0)} ms, measured ${measureMs.toFixed(0)} ms` +
      ` (${km.toFixed(1)} km, ${sums.ascentM.at(-1)!.toFixed(0)} m up)`,
  )
}
