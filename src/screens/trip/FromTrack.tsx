// The door to the track reader, which is fetched when it is opened. The terrain of a track whose stops were taken over
// is kept with the trip, for the picture of the load.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { later } from '../../components/frame'
import type { ProfilePoint } from '../../files'
import { actions } from '../../store'

const GpxImport = later(async () => (await import('./GpxImport')).GpxImport)

interface FromTrackProps {
  /** The trip has the stops of a track; where the reader goes from here is the caller's. */
  onTaken: () => void
  /** A file that is chosen already; the reader is open then, and `onLeft` tells that it was left without changes. */
  file?: File
  /** The stops become a trip of their own. */
  isNew?: boolean
  onLeft?: () => void
}

export function FromTrack({ onTaken, file, isNew = false, onLeft }: FromTrackProps) {
  const place = useRef<HTMLDivElement>(null)
  const [open, setOpen] = useState(file !== undefined)
  const [moves, setMoves] = useState(0)
  // What had the focus is gone when the reader opens or is left: it stays in the same place.
  useLayoutEffect(() => {
    if (moves > 0) place.current?.focus()
  }, [moves])
  const show = (next: boolean) => {
    setOpen(next)
    setMoves(moves + 1)
  }
  const done = (taken: { profile: ProfilePoint[] } | null) => {
    if (!taken) return onLeft ? onLeft() : show(false)
    setOpen(false)
    const isKnown = taken.profile.some(({ eleM }) => eleM !== null)
    actions.setProfile(isKnown ? taken.profile : null)
    onTaken()
  }
  return (
    <div ref={place} tabIndex={-1}>
      {open ? (
        <GpxImport onDone={done} isNew={isNew} {...(file && { file })} />
      ) : (
        <button type="button" onClick={() => show(true)}>
          Stops from a track (GPX)
        </button>
      )}
    </div>
  )
}
