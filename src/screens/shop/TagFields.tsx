// The figures of a tag, in the order tags give them; what is rarely there is one tap away.

import { useId } from 'preact/hooks'
import { Choice, LooseField } from '../../components/fields'
import { CAPS } from '../../plan'
import { bareUnitOf, type System } from '../../units'
import type { ReadTag, TagText } from './tag-text'

interface TagFieldsProps {
  text: TagText
  read: ReadTag
  system: System
  onText: (part: Partial<TagText>) => void
}

export function TagFields({ text, read: { reads, bodyNote }, system, onText }: TagFieldsProps) {
  const byTotal = text.gives === 'total'
  const litres = bareUnitOf('volume', system)
  return (
    <>
      <Choice
        label="The tag gives"
        options={[
          { value: 'body', label: 'Main body' },
          { value: 'total', label: 'A total' },
        ]}
        chosen={text.gives}
        onChoose={gives => onText({ gives })}
      />
      <div class="fields">
        {byTotal ? (
          <LooseField
            label="Total"
            unit={litres}
            text={text.total}
            reading={reads.total}
            onText={total => onText({ total })}
          />
        ) : (
          <LooseField
            label="Main body"
            unit={litres}
            text={text.body}
            reading={reads.body}
            onText={body => onText({ body })}
          />
        )}
        <LooseField
          label="Pockets"
          unit={litres}
          text={text.pockets}
          reading={reads.pockets}
          onText={pockets => onText({ pockets })}
        />
        <LooseField
          label="Pack mass"
          unit={bareUnitOf('mass', system, true)}
          text={text.mass}
          reading={reads.mass}
          onText={mass => onText({ mass })}
        />
        <LooseField
          label="Rated load"
          unit={bareUnitOf('mass', system)}
          text={text.rated}
          reading={reads.rated}
          hint={`One amount, or a range: ${system === 'us' ? '20–30 lb' : '9–13 kg'}.`}
          onText={rated => onText({ rated })}
          wide
        />
      </div>
      {bodyNote ? (
        <p class="echo" role="status">
          {bodyNote}
        </p>
      ) : null}
      <Choice
        label="Frame"
        options={[
          { value: 'framed', label: 'With a frame' },
          { value: 'frameless', label: 'Without' },
        ]}
        chosen={text.frame}
        onChoose={frame => onText({ frame })}
      />
    </>
  )
}

/** What is rarely on a tag, or decides little. */
export function MoreTagFields({ text, read: { reads }, onText }: Omit<TagFieldsProps, 'system'>) {
  return (
    <details class="more">
      <summary>Name, price, what the rating covers</summary>
      <Name text={text.name} onText={name => onText({ name })} />
      <LooseField label="Price" text={text.price} reading={reads.price} onText={price => onText({ price })} />
      <Choice
        label="The rating covers"
        options={[
          { value: 'contents-and-pack', label: 'Contents and pack' },
          { value: 'contents', label: 'Contents' },
        ]}
        chosen={text.covers}
        onChoose={covers => onText({ covers })}
      />
      <label class="toggle">
        <input
          type="checkbox"
          checked={text.sealed === 'yes'}
          onChange={event => onText({ sealed: event.currentTarget.checked ? 'yes' : '' })}
        />
        <span>Waterproof with sealed seams: needs no liner</span>
      </label>
    </details>
  )
}

function Name({ text, onText }: { text: string; onText: (text: string) => void }) {
  const id = useId()
  return (
    <div class="field wide">
      <label for={id}>Name</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        value={text}
        onInput={event => onText(event.currentTarget.value.slice(0, CAPS.nameLength))}
      />
    </div>
  )
}
