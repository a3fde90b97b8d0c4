// One base: its name and its lines, each with how many and where as it is usually packed.

import { useId } from 'preact/hooks'
import { CAPS, defaults } from '../../plan'
import { type Base, type BaseLine, renameBase, setBaseLines } from '../../plan/shelf'
import { actions } from '../../store'
import { nameOf } from './thing-words'
import { CountField, PlaceField } from './UseFields'
import { thingsById } from './uses'

export function BaseEditor({ base }: { base: Base }) {
  const id = useId()
  const things = thingsById.value
  const setLines = (label: string, lines: BaseLine[], path?: string) =>
    actions.editShelf(label, shelf => setBaseLines(shelf, base.id, lines), path)
  return (
    <>
      <div class="field wide">
        <label for={id}>Name</label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={base.name}
          onInput={event => {
            const name = event.currentTarget.value.slice(0, CAPS.nameLength)
            actions.editShelf('Kit, name', shelf => renameBase(shelf, base.id, name), `${base.id}/name`)
          }}
        />
      </div>
      {base.lines.length === 0 ? (
        <p>Nothing is in it. Choose items on the shelf and put them into this kit.</p>
      ) : null}
      <ul class="base-lines">
        {base.lines.map((line, index) => {
          const thing = things.get(line.thing)
          if (!thing) return null
          const name = nameOf(thing)
          const change = (part: Partial<BaseLine>, what: string) =>
            setLines(
              `${base.name}: ${name}, ${what}`,
              base.lines.with(index, { ...line, ...part }),
              `${base.id}/${line.thing}/${what}`,
            )
          return (
            <li key={line.thing}>
              <bdi class="name">{name}</bdi>
              <div class="pack-uses">
                <CountField
                  name={name}
                  count={line.count ?? thing.item.count ?? defaults.ITEM.count}
                  onCount={count => change({ count }, 'how many')}
                />
                <PlaceField
                  name={name}
                  stow={line.stow ?? thing.item.stow ?? 'main-body'}
                  onPlace={stow => change({ stow }, 'place')}
                />
                <button
                  type="button"
                  class="quiet"
                  aria-label={`Take out ${name}`}
                  onClick={() =>
                    setLines(
                      `Delete ${name} from ${base.name}`,
                      base.lines
                        .toSpliced(index, 1)
                        .map(({ inside, ...rest }) =>
                          inside && inside !== line.thing ? { ...rest, inside } : rest,
                        ),
                    )
                  }
                >
                  Take out
                </button>
              </div>
            </li>
          )
        })}
      </ul>
    </>
  )
}
