// The door for a table: what was added of the last one, where the next comes from, and behind it how it is read.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { Added, type AddedNote } from './Added'
import type { Kept } from './source'
import { TableSource } from './TableSource'

interface ImportDoorProps<F extends string> {
  title: string
  heading: 'h2' | 'h3'
  kept: Kept<F>
  onKept: (next: Kept<F>) => void
  /** Shown while there is no table. */
  beside?: ComponentChildren
  /** The table as it is read, while there is one. */
  read: (onAdded: (note: AddedNote) => void) => ComponentChildren
}

export function ImportDoor<F extends string>(props: ImportDoorProps<F>) {
  const { title, heading: Heading, kept, onKept, beside, read } = props
  const [added, setAdded] = useState<(AddedNote & { from: Kept<F> }) | null>(null)
  return (
    <section class="table-import" aria-label={title}>
      <Heading>{title}</Heading>
      {added ? (
        <Added
          added={added}
          onUndone={() => {
            onKept(added.from)
            setAdded(null)
          }}
        />
      ) : null}
      <TableSource
        source={kept.source}
        onSource={source => {
          setAdded(null)
          onKept({ source, asked: {} })
        }}
      />
      {kept.source
        ? read(note => {
            setAdded({ ...note, from: kept })
            onKept({ source: null, asked: {} })
          })
        : beside}
    </section>
  )
}
