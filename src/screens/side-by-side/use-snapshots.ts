// One trip as the snapshots on this device have it: each is a whole backup in a file, so it is read once it is asked for.

import { useEffect, useRef, useState } from 'preact/hooks'
import type { Draft, Typed } from '../../plan'

/** The trip as one snapshot has it; `at`: when that was kept, ms since 1970. */
export interface TripInSnapshot {
  snapshot: string
  at: number
  draft: Draft
  typed: Typed
}

interface SnapshotsRead {
  /** Null: not asked for. */
  found: readonly TripInSnapshot[] | null
  isReading: boolean
  problem: string | null
  read: () => void
}

export function useSnapshots(tripId: string | undefined): SnapshotsRead {
  const [found, setFound] = useState<TripInSnapshot[] | null>(null)
  const [isReading, setReading] = useState(false)
  const [problem, setProblem] = useState<string | null>(null)
  const stop = useRef(new AbortController())
  useEffect(() => {
    setFound(null)
    setReading(false)
    setProblem(null)
    stop.current = new AbortController()
    return () => stop.current.abort()
  }, [tripId])
  async function read() {
    if (!tripId) return
    const { signal } = stop.current
    setReading(true)
    const [{ backups, snapshotText }, { lookInWorker }] = await Promise.all([
      import('../../store/lazy'),
      import('../../store/look'),
    ])
    const made: TripInSnapshot[] = []
    try {
      const snapshots = backups()?.snapshots
      for (const { name, head } of (await snapshots?.list()) ?? []) {
        if (!head || signal.aborted) continue
        const looked = await lookInWorker(new File([await snapshots!.text(name)], name), { signal })
        const trip =
          looked.kind === 'backup' ? looked.backup.trips.find(({ id }) => id === tripId) : undefined
        if (trip) made.push({ snapshot: name, at: head.at, draft: trip.draft, typed: trip.typed })
      }
    } catch (error) {
      if (!signal.aborted) setProblem(snapshotText(error))
    }
    if (signal.aborted) return
    setFound(made)
    setReading(false)
  }
  return { found, isReading, problem, read: () => void read() }
}
