// Bases: lists one packs from again and again. Made of the open trip or of chosen things, changed in place, packed.

import { useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { Row } from '../../components/pieces'
import {
  addBase,
  type Base,
  duplicateBase,
  linesFrom,
  moveBase,
  putOnShelf,
  removeBase,
  type Shelf,
} from '../../plan/shelf'

import { actions, newId, openTrip, shelf } from '../../store'
import { counted } from '../../units'
import { BaseEditor } from './BaseEditor'
import { toShelfHead } from './heads'
import { PackMany } from './PackMany'
import type { ShelfPart } from './Things'
import { thingsById } from './uses'

export function Bases({ detail, onDetail, onSaid }: ShelfPart) {
  const [packing, setPacking] = useState<string | null>(null)
  const { bases } = shelf.value
  const opened = detail?.startsWith('base/') ? detail.slice('base/'.length) : null
  const packed = bases.find(({ id }) => id === packing)
  if (packed)
    return (
      <PackMany
        key={packed.id}
        title={`Pack ${packed.name}`}
        lines={packed.lines}
        onBack={() => {
          setPacking(null)
          toShelfHead()
        }}
        onDone={said => {
          setPacking(null)
          onSaid(said, 'bases')
        }}
      />
    )
  const edit = (label: string, fn: (shelf: Shelf) => Shelf) => () => actions.editShelf(label, fn)
  return (
    <>
      <p>
        A kit is what you pack again and again, such as for three seasons. Pack it to put all of it into the
        trip. Each item stays linked to the shelf.
      </p>
      <ul class="rows">
        {bases.map((base, index) => {
          const { id, name } = base
          return (
            <Row
              key={id}
              id={id}
              open={opened === id}
              onToggle={() => onDetail(opened === id ? 'bases' : `base/${id}`)}
              summary={<Summary base={base} />}
              below={
                openTrip.value && base.lines.length > 0 ? (
                  <div class="actions">
                    <button
                      type="button"
                      aria-label={`Pack into this trip: ${name}`}
                      onClick={() => setPacking(id)}
                    >
                      Pack into this trip
                    </button>
                  </div>
                ) : null
              }
              actions={{
                name,
                moveUp: index > 0 ? edit(`Move kit ${name}`, s => moveBase(s, id, index - 1)) : undefined,
                moveDown:
                  index < bases.length - 1
                    ? edit(`Move kit ${name}`, s => moveBase(s, id, index + 1))
                    : undefined,
                duplicate: edit(`Duplicate kit ${name}`, s => duplicateBase(s, id, newId)),
                remove: edit(`Delete kit ${name}`, s => removeBase(s, id)),
              }}
            >
              <BaseEditor base={base} />
            </Row>
          )
        })}
      </ul>
      <div class="actions">
        {openTrip.value ? <FromTrip onMade={onSaid} /> : null}
        <button type="button" onClick={() => onDetail('choose')}>
          Choose items for a kit
        </button>
      </div>
    </>
  )
}

function Summary({ base }: { base: Base }) {
  const formats = useFormats()
  const things = thingsById.value
  const kg = base.lines.reduce((sum, { thing, count }) => {
    const item = things.get(thing)?.item
    return sum + (item?.massKg ?? 0) * (count ?? item?.count ?? 1)
  }, 0)
  return (
    <>
      <bdi class="name">{base.name}</bdi>
      <span class="facts-line" data-figures="typed">
        {counted(base.lines.length, 'item')}, {formats.kg(kg)} together
      </span>
    </>
  )
}

/** All of the trip's gear becomes a base; what is not on the shelf yet is put there in the same step. */
function FromTrip({ onMade }: { onMade: ShelfPart['onSaid'] }) {
  const gear = openTrip.value?.draft.gear ?? []
  if (gear.length === 0) return null
  const make = () => {
    const id = newId()
    const name = openTrip.peek()?.draft.name || 'A kit'
    actions.editBoth(`Make the kit ${name}`, both => {
      const ids = both.draft.gear.map(item => item.id)
      const { draft, shelf } = putOnShelf(both, ids, { newId, now: Date.now() })
      return { draft, shelf: addBase(shelf, () => id, { name, lines: linesFrom(draft, shelf) }) }
    })
    onMade(`${name} is a kit now. What was not on the shelf has been put there.`, `base/${id}`)
  }
  return (
    <button type="button" onClick={make}>
      Save this trip’s gear as a kit
    </button>
  )
}
