// An insulated thing by its fill and its shell: what it takes under three squeezes, each to be used by a tap.

import { useState } from 'preact/hooks'
import { Choice, LooseField, readQuantity, useSystem } from '../../components/fields'
import { rangeInWords } from '../../components/item-words'
import type { LitresRange } from '../../plan'
import { withRange } from '../../plan/litres'
import { formatsIn } from '../../report'
import { type Fill, insulationLimit, squeezed, squeezeStanding } from '../../report/measuring'
import { bareUnitOf } from '../../units'
import { useRangeEdit } from './item-home'
import type { TextsProps } from './texts'

const FILLS = [
  { value: 'down', label: 'Down' },
  { value: 'synthetic', label: 'Synthetic' },
] as const

export function MeasureSqueeze({ item, texts, onText }: TextsProps) {
  const system = useSystem()
  const formats = formatsIn(system)
  const editRange = useRangeEdit()
  const [fill, setFill] = useState<Fill>('down')
  const [used, setUsed] = useState<string | null>(null)
  const read = (key: string, label: string) =>
    readQuantity(texts[key] ?? '', { kind: 'mass', label, limit: insulationLimit, system, fine: true })
  const fillRead = read('fill', 'Fill')
  const shellRead = read('shell', 'Shell')
  const fillKg = 'value' in fillRead ? fillRead.value : undefined
  const rest =
    item.massKg === undefined || fillKg === undefined ? undefined : Math.max(0, item.massKg - fillKg)
  const shellKg = 'value' in shellRead ? (shellRead.value ?? rest) : undefined
  const results = fillKg === undefined || shellKg === undefined ? [] : squeezed({ fill, fillKg, shellKg })
  const unit = bareUnitOf('mass', system, true)
  const isRest = 'value' in shellRead && shellRead.value === undefined && rest !== undefined

  function use(label: string, range: LitresRange) {
    editRange(item, `${item.name || 'Item'}, ${label.toLowerCase()}`, of => withRange(of, range))
    setUsed(label)
  }

  return (
    <>
      <p class="hint">
        For a sleeping bag, quilt or warm jacket: how much of it is fill, and how much the rest.
      </p>
      <Choice label="Fill" options={FILLS} chosen={fill} onChoose={setFill} />
      <div class="fields">
        <LooseField
          label="Mass of the fill"
          unit={unit}
          text={texts.fill ?? ''}
          reading={fillRead}
          onText={text => onText('fill', text)}
        />
        <LooseField
          label="Mass of the shell"
          unit={unit}
          text={texts.shell ?? ''}
          reading={shellRead}
          onText={text => onText('shell', text)}
          hint={isRest ? `Empty: ${formats.gear(rest)}, the rest of its mass.` : undefined}
        />
      </div>
      {results.length > 0 ? (
        <ul class="kinds" data-figures="cited">
          {results.map(({ squeeze, label, range }) => (
            <li key={squeeze}>
              <button type="button" class="quiet kind" onClick={() => use(label, range)}>
                <span class="name">{label}</span>
                <span class="facts-line">{rangeInWords(range, system)}. Use this</span>
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <p role="status">{used ? `${used}: these are its litres now, as a range.` : ''}</p>
      <p class="hint" data-figures="cited">
        {squeezeStanding}
      </p>
    </>
  )
}
