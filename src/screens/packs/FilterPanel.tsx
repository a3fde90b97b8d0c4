// The controls of the filter, folded away until they are asked for.

import { useId } from 'preact/hooks'
import { Choice, LooseField } from '../../components/fields'
import type { DraftPack } from '../../plan'
import { bareUnitOf } from '../../units'
import type { PackList } from './pack-list'
import { BOUND_NAMES, BOUNDS, type Bound, look } from './view'

interface FilterPanelProps {
  list: PackList
  isApart: boolean
  /** The table has a switch of its own for mixed answers. */
  hasTable: boolean
}

export function FilterPanel({ list, isApart, hasTable }: FilterPanelProps) {
  const { chosen, packs } = list
  const tags = tagsOf(packs)
  return (
    <div class="filter-panel">
      <Words label="Name, notes, tags" text={chosen.sought} onText={sought => look({ sought })} />
      <Choice
        label="Frame"
        options={[
          { value: '', label: 'Any' },
          { value: 'framed', label: 'With' },
          { value: 'frameless', label: 'Without' },
        ]}
        chosen={chosen.frame ?? ''}
        onChoose={frame => look({ frame: frame || null })}
      />
      <Choice
        label="Whose"
        options={[
          { value: '', label: 'All' },
          { value: 'owned', label: 'Mine' },
          { value: 'wanted', label: 'Wanted' },
        ]}
        chosen={chosen.has ?? ''}
        onChoose={has => look({ has: has || null })}
      />
      {tags.length > 0 ? (
        <Choice
          label="Tag"
          options={['', ...tags].map(tag => ({ value: tag, label: tag || 'Any' }))}
          chosen={chosen.tag ?? ''}
          onChoose={tag => look({ tag: tag || null })}
        />
      ) : null}
      <div class="cluster">
        <Only label="Waterproof" isOn={chosen.sealed} onTurn={sealed => look({ sealed })} />
        <Only label="Starred" isOn={chosen.starred} onTurn={starred => look({ starred })} />
        <Only label="Set aside" isOn={chosen.aside} onTurn={aside => look({ aside })} />
        {isApart || hasTable ? null : (
          <Only label="Answers mixed when sorted" isOn={chosen.mixed} onTurn={mixed => look({ mixed })} />
        )}
      </div>
      <Words label="Fabric" text={chosen.fabric} onText={fabric => look({ fabric })} />
      <div class="fields">
        {BOUND_NAMES.map(name => (
          <BoundField key={name} name={name} list={list} />
        ))}
      </div>
      <p class="hint">A pack whose figure is not known is left out where you ask for it.</p>
    </div>
  )
}

const tagsOf = (packs: readonly DraftPack[]) => [...new Set(packs.flatMap(({ tags = [] }) => tags))].sort()

function BoundField({ name, list: { chosen, readings, formats } }: { name: Bound; list: PackList }) {
  const { label, kind } = BOUNDS[name]
  const { system } = formats
  const unit = name === 'mostKg' ? (system === 'us' ? 'oz' : 'g') : bareUnitOf(kind, system)
  return (
    <LooseField
      label={label}
      unit={unit || undefined}
      text={chosen.texts[name]}
      reading={readings[name]}
      onText={text => look({ texts: { ...chosen.texts, [name]: text } })}
    />
  )
}

interface WordsProps {
  label: string
  text: string
  onText: (text: string) => void
}

function Words({ label, text, onText }: WordsProps) {
  const id = useId()
  return (
    <div class="field wide">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="search"
        autocomplete="off"
        value={text}
        onInput={event => onText(event.currentTarget.value)}
      />
    </div>
  )
}

interface OnlyProps {
  label: string
  isOn: boolean
  onTurn: (on: boolean) => void
}

const Only = ({ label, isOn, onTurn }: OnlyProps) => (
  <label class="toggle">
    <input type="checkbox" checked={isOn} onChange={event => onTurn(event.currentTarget.checked)} />
    <span>{label}</span>
  </label>
)
