// The figures the hiker goes by: from when a pack is light or cheap, and one figure put together by themselves.

import { useId, useState } from 'preact/hooks'
import { LooseField, readQuantity, SelectOne, useSystem } from '../../components/fields'
import { WhenOpen } from '../../components/pieces'
import type { OwnFigures as Figures } from '../../plan/shelf'
import {
  MEASURE_NAMES,
  MEASURE_WORDS,
  measureWords,
  OWN_LIMIT_NAMES,
  OWN_LIMITS,
  POWERS,
} from '../../report/compare-packs'
import { actions, shelf } from '../../store'
import { bareUnitOf, capital, editText } from '../../units'

const LIMIT = { min: 0.01, max: 1e6, unit: '' }

export function OwnFigures() {
  return (
    <WhenOpen class="more" summary="Your figures: light, cheap, one of your own">
      {() => (
        <>
          <p class="hint">At or under these, a pack says so in words. Empty: it says nothing.</p>
          <div class="fields">
            {OWN_LIMIT_NAMES.map(name => (
              <Under key={name} name={name} />
            ))}
          </div>
          <OwnMeasure />
        </>
      )}
    </WhenOpen>
  )
}

const change = (label: string, path: string, fn: (figures: Figures) => Figures) =>
  actions.editShelf(label, list => ({ ...list, figures: fn(list.figures ?? {}) }), `figures/${path}`)

function Under({ name }: { name: (typeof OWN_LIMIT_NAMES)[number] }) {
  const system = useSystem()
  const { word, label, kind } = OWN_LIMITS[name]
  const bareUnit = bareUnitOf(kind, system)
  const value = shelf.value.figures?.under?.[name]
  const [typed, setTyped] = useState<string | null>(null)
  const read = (text: string) =>
    readQuantity(text, { kind, label: `${label}, at most`, limit: LIMIT, system })
  const shown = value === undefined ? '' : editText(kind, value, { system, bareUnit })
  const text = typed ?? shown
  const reading = read(text)
  return (
    <LooseField
      label={`${capital(word)}: at most`}
      unit={bareUnit || undefined}
      text={text}
      reading={reading}
      onText={next => {
        setTyped(next)
        const found = read(next)
        if (!('value' in found)) return
        change(`Your figures, ${label}`, `under/${name}`, ({ under = {}, ...rest }) => {
          const { [name]: _old, ...others } = under
          return { ...rest, under: found.value === undefined ? others : { ...others, [name]: found.value } }
        })
      }}
    />
  )
}

function OwnMeasure() {
  const id = useId()
  const figures = shelf.value.figures ?? {}
  const { name = '', powers = {} } = figures.measure ?? {}
  const set = (path: string, part: Partial<NonNullable<Figures['measure']>>) =>
    change('Your own figure', `measure/${path}`, before => ({
      ...before,
      measure: { name: '', powers: {}, ...before.measure, ...part },
    }))
  const words = measureWords(figures)
  return (
    <fieldset class="setup">
      <legend>One figure of your own</legend>
      <div class="field wide">
        <label for={id}>Its name</label>
        <input
          id={id}
          type="text"
          maxLength={60}
          value={name}
          onInput={event => set('name', { name: event.currentTarget.value })}
        />
      </div>
      <div class="fields">
        {MEASURE_NAMES.map(part => (
          <SelectOne
            key={part}
            label={MEASURE_WORDS[part]}
            options={Object.entries(POWERS).map(([value, label]) => ({ value, label }))}
            chosen={String(powers[part] ?? 0)}
            onChoose={power => {
              const { [part]: _old, ...others } = powers
              set(part, { powers: power === '0' ? others : { ...others, [part]: Number(power) } })
            }}
          />
        ))}
      </div>
      <p class="hint" role="status">
        {words ? `${name || 'Your figure'} = ${words}. Sort by it: small comes first.` : ''}
      </p>
    </fieldset>
  )
}
