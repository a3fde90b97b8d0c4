// What the worker says to the page, and the check of each message before it is believed.

import * as z from 'zod/mini'
import type { GpxMeasured } from './types'

export type WorkerMessage = { kind: 'progress'; share: number } | { kind: 'done'; result: GpxMeasured }

const sums = z.instanceof(Float64Array)
const amount = z.number().check(z.gte(0))

const track = z.object({
  kind: z.enum(['track', 'route']),
  name: z.string(),
  isNamed: z.boolean(),
  points: amount,
  km: amount,
  gaps: z.object({ count: amount, km: amount }),
  longestStepKm: amount,
  elevation: z.enum(['all', 'part', 'none']),
  stepKm: z.number().check(z.gt(0)),
  sums: z
    .object({ ascentM: sums, descentM: sums, unknownKm: sums, hours: sums })
    .check(
      z.refine(
        all => new Set(Object.values(all).map(each => each.length)).size === 1 && all.hours.length > 1,
      ),
    ),
  passes: z.array(z.object({ name: z.string(), km: amount, besideM: amount })),
  profile: z.array(z.object({ km: amount, eleM: z.nullable(z.number()) })),
})

const message = z.union([
  z.object({ kind: z.literal('progress'), share: z.number().check(z.gte(0), z.lte(1)) }),
  z.object({
    kind: z.literal('done'),
    result: z.union([
      z.object({
        ok: z.literal(true),
        tracks: z.array(track).check(z.minLength(1)),
        notes: z.array(z.string()),
      }),
      z.object({ ok: z.literal(false), message: z.string() }),
    ]),
  }),
])

/** The worker's message if it has the agreed shape, else null. */
export function workerMessage(data: unknown): WorkerMessage | null {
  const checked = message.safeParse(data)
  return checked.success ? checked.data : null
}
