// What the hiker says of a pack that no tag could: whose it is, a star, why it is set aside, notes, words to find it by,
// and which trip takes it.

import { useId } from 'preact/hooks'
import { Choice } from '../../components/fields'
import { type DraftPack, fieldPath, tagsIn } from '../../plan'
import { actions, openTrip } from '../../store'
import { CompareButton } from '../packs-beside/chosen'
import { takenOn } from './taken'

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
      <Toggle
        label="Starred"
        checked={pack.starred === true}
        onChange={on => set('starred', on || undefined)}
      />
      <Taking pack={pack} />
      {openTrip.value ? <CompareButton pack={pack} /> : null}
      <Toggle
        label="Set aside: listed last"
        checked={pack.aside !== undefined}
        onChange={on => set('aside', on ? '' : undefined)}
      />
      {pack.aside === undefined ? null : (
        <Words label="Why?" text={pack.aside} onText={text => set('aside', text)} />
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

/** The set-up that the open trip takes, and the other trips that take this pack. */
function Taking({ pack }: { pack: DraftPack }) {
  const trip = openTrip.value
  if (!trip) return null
  const taken = trip.draft.takes?.pack === pack.id ? trip.draft.takes.setup : null
  const take = (setup: string | null) =>
    actions.setField('takes', setup === null ? undefined : { pack: pack.id, setup }, null)
  const others = takenOn(pack.id).filter(({ id }) => id !== trip.id)
  return (
    <>
      {pack.setups.map(({ id, name }) => (
        <Toggle
          key={id}
          label={
            pack.setups.length > 1
              ? `Taken on this trip, ${name || 'set-up without a name'}`
              : 'Taken on this trip'
          }
          checked={taken === id}
          onChange={on => take(on ? id : null)}
        />
      ))}
      {others.length > 0 ? (
        <p class="hint">
          Also taken on: <bdi>{others.map(({ name }) => name).join(', ')}</bdi>.
        </p>
      ) : null}
    </>
  )
}

interface ToggleProps {
  label: string
  checked: boolean
  onChange: (on: boolean) => void
}

const Toggle = ({ label, checked, onChange }: ToggleProps) => (
  <div class="field wide">
    <label class="toggle">
      <input type="checkbox" checked={checked} onChange={event => onChange(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  </div>
)

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
