// A track file as the stops of the open trip, or of a new one: choose it, see what it holds, split it, keep what fits.
// Loaded when it is asked for. Nothing of the trip changes before "Use these stops".

import { useEffect, useRef, useState } from 'preact/hooks'
import { FileButton } from '../../components/files'
import { GPX_CAPS, type GpxMeasured, importGpx, type ProfilePoint } from '../../files/gpx'
import { GpxTrack } from './GpxTrack'
import './gpx-import.css'
import { countText } from '../../units'

export interface GpxImportProps {
  /** Called when the stops were taken over, with a profile of at most 400 points to draw; or with null: left. */
  onDone: (taken: { profile: ProfilePoint[] } | null) => void
  /** A file that is chosen already. */
  file?: File
  /** The stops become a trip of their own. */
  isNew?: boolean
}

type Measured = Extract<GpxMeasured, { ok: true }>
type State =
  | { at: 'choosing'; problem?: string }
  | { at: 'reading'; name: string; share: number }
  | { at: 'chosen'; name: string; measured: Measured }

export function GpxImport({ onDone, file: given, isNew = false }: GpxImportProps) {
  const [state, setState] = useState<State>({ at: 'choosing' })
  const reading = useRef<AbortController | null>(null)
  // Leaving the screen ends a reading that still goes on.
  useEffect(() => () => reading.current?.abort(), [])
  useEffect(() => void open(given), [given])

  async function open(file: File | undefined) {
    if (!file) return
    reading.current?.abort()
    const own = new AbortController()
    reading.current = own
    const { name } = file
    setState({ at: 'reading', name, share: 0 })
    const result = await importGpx(file, {
      signal: own.signal,
      onProgress: share => setState({ at: 'reading', name, share }),
    })
    if (reading.current !== own) return
    if (own.signal.aborted) setState({ at: 'choosing' })
    else if (result.ok) setState({ at: 'chosen', name, measured: result })
    else setState({ at: 'choosing', problem: `${name}: ${result.message}` })
  }

  return (
    <section class="gpx" aria-label="Stops from a track file">
      {state.at === 'reading' ? (
        <Reading {...state} onCancel={() => reading.current?.abort()} />
      ) : (
        <>
          <FileChoice again={state.at === 'chosen'} onFile={open} />
          <button type="button" class="link" onClick={() => onDone(null)}>
            Leave without changes
          </button>
        </>
      )}
      <div role="status">
        {state.at === 'choosing' && state.problem ? (
          <>
            <p class="problem">{state.problem}</p>
            <p class="hint">{isNew ? 'No trip was made.' : 'Your trip is as it was.'}</p>
          </>
        ) : null}
        {state.at === 'chosen'
          ? state.measured.notes.map(note => (
              <p class="hint" key={note}>
                {note}
              </p>
            ))
          : null}
      </div>
      {state.at === 'chosen' ? <Tracks {...state} isNew={isNew} onDone={onDone} /> : null}
    </section>
  )
}

function FileChoice({
  again,
  onFile,
}: {
  again: boolean
  onFile: (file: File | undefined) => Promise<void>
}) {
  return (
    <>
      <FileButton
        quiet={again}
        label={again ? 'Choose another file' : 'Choose a track file (GPX)'}
        accept=".gpx,application/gpx+xml,application/xml,text/xml"
        onFile={file => void onFile(file)}
      />
      {again ? null : (
        <p class="hint">
          GPX 1.0 or 1.1, up to {GPX_CAPS.fileBytes / 1e6} MB and {countText(GPX_CAPS.points)} points. It is
          read on this device and not sent anywhere.
        </p>
      )}
    </>
  )
}

function Reading({ name, share, onCancel }: { name: string; share: number; onCancel: () => void }) {
  return (
    <>
      <label class="field">
        <span>
          Reading <bdi>{name}</bdi>
        </span>
        <progress max={1} value={share} />
      </label>
      <button type="button" class="quiet" onClick={onCancel}>
        Cancel
      </button>
    </>
  )
}

function Tracks({ measured, isNew = false, onDone }: { measured: Measured } & GpxImportProps) {
  const [index, setIndex] = useState(0)
  const { tracks } = measured
  const track = tracks[index]
  return (
    <>
      {tracks.length > 1 ? (
        <label class="field">
          Which track
          <select value={index} onChange={event => setIndex(Number(event.currentTarget.value))}>
            {tracks.map(({ name, km, kind }, i) => (
              <option key={name + String(i)} value={i}>
                {name} ({kind}, {km.toFixed(1)} km)
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {track ? (
        <GpxTrack key={index} track={track} isNew={isNew} onUsed={profile => onDone({ profile })} />
      ) : null}
    </>
  )
}
