// What the hiker says of a pack that no tag could: whose it is, why it is set aside, notes, words to find it by.

import { useId } from 'preact/hooks'
import { Choice } from '../../components/fields'
import { type DraftPack, fieldPath, tagsIn } from '../../plan'
import { actions } from '../../store'

const HAS = [
  { value: 'owned', label: 'Mine' },
  { value: 'wanted', label: 'Wanted' },
  { value: 'known', label: 'Just known' },
] as const

/** As many characters as a backup takes in. */
const MOST_CHARS = 5000

export function OwnPack({ pack }: { pack: DraftPack }) {
  const set = (field: string, value: unknown) =>
    actions.setField(fieldPath('packs', pack.id, field), value, null)
  return (
    <>
      <Choice
        label="This pack is"
        options={HAS}
        chosen={pack.has ?? 'known'}
        onChoose={has => set('has', has === 'known' ? undefined : has)}
      />
      {pack.aside === undefined ? null : (
        <Words label="Why it is set aside" text={pack.aside} onText={text => set('aside', text)} />
      )}
      <Words
        label="Notes"
        rows={2}
        text={pack.notes ?? ''}
        onText={text => set('notes', text || undefined)}
      />
      <Tags
        key={pack.id}
        tags={pack.tags ?? []}
        onTags={tags => set('tags', tags.length ? tags : undefined)}
      />
    </>
  )
}

interface WordsProps {
  label: string
  text: string
  onText: (text: string) => void
  rows?: number
}

function Words({ label, text, onText, rows = 1 }: WordsProps) {
  const id = useId()
  return (
    <div class="field wide">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={rows}
        maxLength={MOST_CHARS}
        value={text}
        onInput={event => onText(event.currentTarget.value)}
      />
    </div>
  )
}

/** What is typed stays as it is typed; what stands between commas is kept. */
function Tags({ tags, onTags }: { tags: string[]; onTags: (tags: string[]) => void }) {
  const id = useId()
  return (
    <div class="field wide">
      <label for={id}>Tags, with commas between</label>
      <input
        id={id}
        type="text"
        defaultValue={tags.join(', ')}
        onInput={event => onTags(tagsIn(event.currentTarget.value))}
      />
    </div>
  )
}
