// Kinds that a thing's name may mean, to take litres, mass and place from. Nothing is taken before it is tapped.
// Loaded when an item is open; the table's standing is said beside every figure.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { rangeInWords } from '../../components/item-words'
import type { DraftItem } from '../../plan'
import {
  isByMass,
  itemOfKind,
  type Kind,
  litresOfKind,
  originInShort,
  originText,
  suggestKinds,
} from '../../plan/kinds'
import { formatsIn } from '../../report'
import { useRangeEdit } from './item-home'
import './gear.css'

export function KindPicker({ item }: { item: DraftItem }) {
  const { name = '', massKg, use } = item
  const editRange = useRangeEdit()
  const found = useMemo(() => suggestKinds({ name, massKg, use, typing: true }), [name, massKg, use])
  const [taken, setTaken] = useState<{ kind: Kind; name: string } | null>(null)
  const isKnown = item.litres !== undefined || item.litresRange !== undefined
  // The offer is answered once: what was taken is said instead, until the name is another.
  const answer = taken?.name === name && item.litresFrom === 'kind' ? taken.kind : null
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => said.current?.focus(), [answer])

  if (found.length === 0) return null
  const take = (kind: Kind) => {
    editRange(item, `Take ${item.name || 'the item'} as ${kind.kind}`, of => itemOfKind(of, kind))
    setTaken({ kind, name })
  }
  const list = (
    <ul class="kinds" data-figures="cited">
      {found.map(({ kind }) => (
        <li key={kind.kind}>
          <KindButton kind={kind} item={item} onTake={take} />
        </li>
      ))}
    </ul>
  )
  return (
    <div class="kind-picker">
      {answer ? (
        <p ref={said} tabIndex={-1}>
          Taken as <strong>{answer.kind}</strong>: {originText(answer, isByMass(answer, item))}. You can
          change every figure, or undo it.
        </p>
      ) : null}
      {isKnown ? (
        <details class="more">
          <summary>{answer ? 'Use another typical volume' : 'Use a typical volume'}</summary>
          {list}
        </details>
      ) : (
        <>
          <p>
            Is it one of these? Tap to use its litres, and its mass if you have none. Both are typical, not
            measured.
          </p>
          {list}
        </>
      )}
    </div>
  )
}

interface KindButtonProps {
  kind: Kind
  item: DraftItem
  onTake: (kind: Kind) => void
}

function KindButton({ kind, item, onTake }: KindButtonProps) {
  const system = useSystem()
  const formats = formatsIn(system)
  return (
    <button type="button" class="quiet kind" onClick={() => onTake(kind)}>
      <span class="name">{kind.kind}</span>
      <span class="facts-line">
        {rangeInWords(litresOfKind(kind, item), system)}; about {formats.gear(kind.massG / 1000)}
        {kind.pieces ? ` for ${kind.pieces}` : ''}; {originInShort(kind, isByMass(kind, item))}
      </span>
    </button>
  )
}
