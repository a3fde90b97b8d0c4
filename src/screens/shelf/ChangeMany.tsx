// What can be changed of many things at once; each change is one step to undo.

import { useId, useState } from 'preact/hooks'
import { SelectOne } from '../../components/fields'
import { CAPS, choicesOf, FIELDS } from '../../plan'
import { addBase, type BaseLine, removeThings, setBaseLines, setGroup, setStow } from '../../plan/shelf'
import { actions, newId, shelf } from '../../store'
import { counted } from '../../units'
import { StepHead } from './heads'
import { retire } from './ThingEditor'

interface ChangeManyProps {
  ids: readonly string[]
  onDone: (said: string) => void
  onBack: () => void
}

export function ChangeMany({ ids, onDone, onBack }: ChangeManyProps) {
  const group = useId()
  const [groupText, setGroupText] = useState('')
  const { things } = shelf.value
  const all = new Set(ids)
  const groups = [...new Set(things.flatMap(({ item }) => item.group ?? []))]
  const many = counted(ids.length, 'item')
  const someRetired = things.some(thing => all.has(thing.id) && thing.retired)
  const someNot = things.some(thing => all.has(thing.id) && !thing.retired)
  const typed = groupText.trim()
  const putInGroup = (name: string): string => {
    actions.editShelf(`Put ${many} in ${name || 'no group'}`, shelf => setGroup(shelf, ids, name, Date.now()))
    return `${many} put in ${name || 'no group'}.`
  }
  /** A group that was typed is not lost by going on with something else. */
  const typedFirst = () => (typed ? `${putInGroup(typed)} ` : '')
  const act = (change: () => void, said: string) => () => {
    const first = typedFirst()
    change()
    onDone(first + said)
  }
  return (
    <section class="many" aria-label={`Change ${many}`}>
      <StepHead title={`Change ${many}`} />
      <div class="field">
        <label for={group}>Group</label>
        <div class="beside">
          <input
            id={group}
            type="text"
            autocomplete="off"
            list={`${group}-list`}
            value={groupText}
            onInput={event => setGroupText(event.currentTarget.value.slice(0, CAPS.nameLength))}
            onKeyDown={event => {
              if (event.key === 'Enter' && !event.isComposing && typed) onDone(putInGroup(typed))
            }}
          />
          <button type="button" onClick={() => onDone(putInGroup(typed))}>
            {typed ? 'Set the group' : 'No group'}
          </button>
        </div>
        <datalist id={`${group}-list`}>
          {groups.map(name => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      <fieldset class="field choice">
        <legend>Where you carry them</legend>
        <div class="actions">
          {choicesOf(FIELDS.item.stow).map(({ value, label }) => (
            <button
              key={value}
              type="button"
              class="quiet"
              onClick={act(
                () =>
                  actions.editShelf(`Put ${many}: ${label.toLowerCase()}`, shelf =>
                    setStow(shelf, ids, value, Date.now()),
                  ),
                `${many}: ${label.toLowerCase()}.`,
              )}
            >
              {label}
            </button>
          ))}
        </div>
      </fieldset>
      <IntoBase ids={ids} before={typedFirst} onDone={onDone} />
      <div class="actions">
        {someNot ? (
          <button
            type="button"
            class="quiet"
            onClick={act(() => retire(ids, true, many), `${many} retired.`)}
          >
            Retire
          </button>
        ) : null}
        {someRetired ? (
          <button
            type="button"
            class="quiet"
            onClick={act(() => retire(ids, false, many), `${many} taken back.`)}
          >
            Use again
          </button>
        ) : null}
        <button
          type="button"
          class="quiet"
          onClick={act(
            () => actions.editShelf(`Delete ${many} from the shelf`, shelf => removeThings(shelf, ids)),
            `${many} deleted.`,
          )}
        >
          Delete
        </button>
      </div>
      <button type="button" class="quiet" onClick={onBack}>
        Back to choosing
      </button>
    </section>
  )
}

interface IntoBaseProps {
  ids: readonly string[]
  /** Done first; what it says comes first too. */
  before: () => string
  onDone: (said: string) => void
}

/** A new base of the chosen things, or an old one with them in it too. */
function IntoBase({ ids, before, onDone }: IntoBaseProps) {
  const at = useId()
  const [into, setInto] = useState('')
  const [nameText, setNameText] = useState('')
  const { bases } = shelf.value
  const old = bases.find(base => base.id === into)
  const put = () => {
    const first = before()
    const lines: BaseLine[] = ids.map(thing => ({ thing }))
    const name = old?.name ?? (nameText.trim() || `Kit ${bases.length + 1}`)
    if (old) {
      const more = lines.filter(({ thing }) => !old.lines.some(line => line.thing === thing))
      actions.editShelf(`Add to the kit ${name}`, shelf =>
        setBaseLines(shelf, old.id, [...old.lines, ...more]),
      )
      onDone(`${first}${counted(more.length, 'item')} added to ${name}.`)
      return
    }
    actions.editShelf(`Make the kit ${name}`, shelf => addBase(shelf, newId, { name, lines }))
    onDone(`${first}${name} is a kit now.`)
  }
  return (
    <fieldset>
      <legend>Make a kit</legend>
      <p class="hint">A kit is what you pack again and again, such as for summer.</p>
      {bases.length > 0 ? (
        <SelectOne
          label="Into"
          options={[
            { value: '', label: 'A new kit' },
            ...bases.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          chosen={into}
          onChoose={setInto}
        />
      ) : null}
      {old ? null : (
        <div class="field">
          <label for={`${at}-name`}>Its name</label>
          <input
            id={`${at}-name`}
            type="text"
            autocomplete="off"
            placeholder="Three-season kit"
            value={nameText}
            onInput={event => setNameText(event.currentTarget.value.slice(0, CAPS.nameLength))}
          />
        </div>
      )}
      <button type="button" onClick={put}>
        {old ? `Add to ${old.name}` : 'Make the kit'}
      </button>
    </fieldset>
  )
}
