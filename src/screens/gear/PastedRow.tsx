// One line of a pasted list: whether it is taken, what was understood, and which kind gives its litres.

import { isFood, NOT_EATEN, type Taken } from '../../files/list'
import { useSystem } from '../../parts/fields'
import { litresOfKind, oddMass, originInShort } from '../../plan/kinds'
import { shownIn } from '../../report'
import { rangeInWords } from './kind-words'
import { NO_KIND, type PastedLine } from './pasted'

interface PastedRowProps {
  row: PastedLine
  chosen: Taken & { take: boolean }
  onChoose: (change: { take?: boolean; kind?: string }) => void
}

export function PastedRow({ row: line, chosen, onChoose }: PastedRowProps) {
  const { row, suggestions } = line
  const { kind, take } = chosen
  const system = useSystem()
  const shown = shownIn(system)
  const { name, massKg, litres, count = 1, group, worn, notes } = row
  const isDaily = row.use === 'daily' || kind?.use === 'daily'
  const isUneaten = take && !isDaily && isFood(name)
  const facts = [
    massKg === undefined ? 'no mass' : shown.gear(massKg) + (count === 1 ? '' : ' each'),
    litres === undefined ? null : shown.litres(litres),
    worn ? 'worn' : null,
    isDaily ? 'a day’s food' : null,
    group,
  ]
  const odd = kind ? oddMass(kind, massKg) : null
  return (
    <li class="row pasted" data-figures="cited">
      <label class="toggle">
        <input
          type="checkbox"
          checked={take}
          onChange={event => onChoose({ take: event.currentTarget.checked })}
        />
        <span>
          <bdi class="name">
            {count === 1 ? '' : `${count} × `}
            {name}
          </bdi>
          <span class="facts-line"> {facts.filter(Boolean).join(', ')}</span>
        </span>
      </label>
      {row.isSum ? <p class="hint">Looks like the sum of the others, so it is left.</p> : null}
      {row.isPack ? (
        <p class="hint">Your pack? Its mass belongs under Packs{take ? '' : ', so it is left'}.</p>
      ) : null}
      {isUneaten ? <p class="hint">{NOT_EATEN}</p> : null}
      {notes.map(note => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
      {take && suggestions.length > 0 ? (
        <>
          <select
            aria-label={`Kind of ${name}`}
            value={kind?.kind ?? NO_KIND}
            onChange={event => onChoose({ kind: event.currentTarget.value })}
          >
            <option value={NO_KIND}>No kind ({suggestions.length} may fit)</option>
            {suggestions.map(({ kind }) => (
              <option key={kind.kind} value={kind.kind}>
                {kind.kind}
              </option>
            ))}
          </select>
          {kind ? (
            <p class="hint">
              {litres === undefined ? `${rangeInWords(litresOfKind(kind, row), system)}, ` : ''}
              {massKg === undefined ? `about ${shown.gear(kind.massG / 1000)}, ` : ''}
              {originInShort(kind)}.
              {odd
                ? ` It is ${odd === 'light' ? 'lighter' : 'heavier'} than most of its kind (${shown.gear(kind.massLowG / 1000)} to ${shown.gear(kind.massHighG / 1000)}).`
                : ''}
            </p>
          ) : null}
        </>
      ) : null}
    </li>
  )
}
