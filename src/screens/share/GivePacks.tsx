// Packs given on: those that are shown now, as a file or a link, without what the giver says of them unless wished.

import './share.css'
import { useMemo, useState } from 'preact/hooks'
import { saveFile } from '../../components/files'
import { givenPacks } from '../../files/pack-list'
import { packsLink } from '../../files/share'
import type { DraftPack } from '../../plan'
import { counted } from '../../units'
import { useLinkOf, Ways } from './Ways'

export function GivePacks({ packs }: { packs: DraftPack[] }) {
  const [withNotes, setWithNotes] = useState(false)
  const [saved, setSaved] = useState(false)
  // The same packs come as another list whenever something else on the page changes.
  const text = JSON.stringify(givenPacks(packs, { withNotes }))
  const document = useMemo(() => givenPacks(packs, { withNotes }), [text])
  const made = useLinkOf(document, packsLink)
  if (packs.length === 0) return <p>No packs are shown now.</p>
  return (
    <section>
      <h3>Give packs on</h3>
      <p>
        {counted(packs.length, 'pack')}: those that are shown now. Whoever opens the file or the link gets a
        copy, judged by trips and limits of their own.
      </p>
      <label class="toggle">
        <input
          type="checkbox"
          checked={withNotes}
          onChange={event => setWithNotes(event.currentTarget.checked)}
        />
        <span>With my notes, tags and reasons for setting aside</span>
      </label>
      <div class="actions">
        <button
          type="button"
          class="quiet"
          onClick={() => {
            saveFile('packs.json', JSON.stringify(document, null, 1))
            setSaved(true)
          }}
        >
          Save as a file
        </button>
      </div>
      <p role="status">{saved ? 'The file is with your downloads.' : ''}</p>
      {made?.ok === false ? (
        <p class="problem">{made.message}</p>
      ) : (
        <Ways key={made?.link} link={made?.link ?? null} name="Packs" />
      )}
    </section>
  )
}
