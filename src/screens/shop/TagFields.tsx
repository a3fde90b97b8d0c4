// The figures of a tag, in the order tags give them; what is rarely there is one tap away.

import { useId } from 'preact/hooks'
import { Choice, LooseField } from '../../components/fields'
import { CAPS, choicesOf, FIELDS } from '../../plan'
import { bareUnitOf, type System } from '../../units'
import { ASKED, type ReadTag, type TagText } from './tag-text'

interface TagFieldsProps {
  text: TagText
  read: ReadTag
  system: System
  onText: (part: Partial<TagText>) => void
}

/** The fields of a tag by their keys. */
const fieldsOf =
  ({ text, read: { reads }, system, onText }: TagFieldsProps) =>
  (key: keyof typeof ASKED, besides: { hint?: string; wide?: boolean } = {}) => {
    const { label, kind, fine } = ASKED[key]
    return (
      <LooseField
        label={label}
        unit={bareUnitOf(kind, system, fine)}
        text={text[key]}
        reading={reads[key]}
        onText={typed => onText({ [key]: typed })}
        {...besides}
      />
    )
  }

export function TagFields(props: TagFieldsProps) {
  const { text, read, system, onText } = props
  const { bodyNote } = read
  const field = fieldsOf(props)
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
        {field(text.gives)}
        {field('pockets')}
        {field('mass')}
        {field('rated', {
          hint: `One amount, or a range: ${system === 'us' ? '20–30 lb' : '9–13 kg'}.`,
          wide: true,
        })}
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
export function MoreTagFields(props: TagFieldsProps) {
  const { text, onText } = props
  return (
    <details class="more">
      <summary>Name, price, what the rating covers</summary>
      <Name text={text.name} onText={name => onText({ name })} />
      {fieldsOf(props)('price')}
      <Choice
        label={FIELDS.setup.ratingCovers.label}
        options={choicesOf(FIELDS.setup.ratingCovers)}
        chosen={text.covers}
        onChoose={covers => onText({ covers })}
      />
      <label class="toggle">
        <input
          type="checkbox"
          checked={text.sealed === 'yes'}
          onChange={event => onText({ sealed: event.currentTarget.checked ? 'yes' : '' })}
        />
        <span>{FIELDS.pack.sealed.label}</span>
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
