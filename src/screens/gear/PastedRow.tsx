// One line of a pasted list: whether it is taken, what was understood, what is in doubt, and which kind gives its litres.

import { useFormats, useSystem } from '../../components/fields'
import { rangeInWords } from '../../components/item-words'
import type { Taken } from '../../files/list'
import { isByMass, type Kind, litresOfKind, oddMass, originInShort } from '../../plan/kinds'
import { formatsIn } from '../../report'
import { doubtsOf, NO_KIND, type PastedLine } from './pasted'

interface PastedRowProps {
  row: PastedLine
  chosen: Taken & { take: boolean }
  onChoose: (change: { take?: boolean; kind?: string }) => void
}

export function PastedRow({ row: line, chosen, onChoose }: PastedRowProps) {
  const { row, suggestions } = line
  const { kind, take } = chosen
  const formats = useFormats()
  const { name, massKg, litres, count = 1, group, worn, holdsWaterLitres, holdsLitres } = row
  const holds = holdsWaterLitres ?? holdsLitres
  const facts = [
    massKg === undefined ? 'no mass' : formats.gear(massKg) + (count === 1 ? '' : ' each'),
    litres === undefined ? null : formats.litres(litres),
    holds === undefined ? null : `holds ${formats.litres(holds)}`,
    worn ? 'worn' : null,
    row.use === 'daily' || kind?.use === 'daily' ? 'a day’s food' : row.use === 'nightly' ? 'a night' : null,
    group,
  ]
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
      {doubtsOf(line, chosen).map(doubt => (
        <p key={doubt} class="hint">
          {doubt}
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
          {kind ? <KindHint row={row} kind={kind} /> : null}
        </>
      ) : null}
    </li>
  )
}

/** What the kind gives, and where that comes from. */
function KindHint({ row, kind }: { row: Taken['row']; kind: Kind }) {
  const system = useSystem()
  const formats = formatsIn(system)
  const { massKg, litres } = row
  const odd = oddMass(kind, massKg)
  return (
    <p class="hint">
      {litres === undefined ? `${rangeInWords(litresOfKind(kind, row), system)}, ` : ''}
      {massKg === undefined ? `about ${formats.gear(kind.massG / 1000)}, ` : ''}
      {originInShort(kind, isByMass(kind, row))}.
      {odd
        ? ` It is ${odd === 'light' ? 'lighter' : 'heavier'} than most of its kind (${formats.gear(kind.massLowG / 1000)} to ${formats.gear(kind.massHighG / 1000)}).`
        : ''}
    </p>
  )
}
