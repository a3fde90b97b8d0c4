// A pack by itself: what it is for the trip and why, what would help, how far it reaches, what its owner says of it, and
// its figures to edit. It takes the room it is given: the whole of a phone, or a column beside the list.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { useWayBack } from '../../components/why'
import { type DraftPack, packName } from '../../plan'
import { FIT_LINE, type Formats } from '../../report'
import { edited, openTrip } from '../../store'
import { CompareButton } from '../packs-beside/chosen'
import { ApartCard } from './ApartCard'
import { type Judged, useJudged } from './judged'
import { OwnPack } from './OwnPack'
import { PackActions } from './PackActions'
import { PackEditor } from './PackEditor'
import { PackVerdicts } from './PackVerdicts'
import { packFacts, packMarks, packWords } from './pack-words'
import { takenOn } from './taken'

interface PackPageProps {
  pack: DraftPack
  /** Apart from any trip. */
  isApart: boolean
  onClose: () => void
}

/** Only one stands alone: there is nothing to move it among. */
const ALONE = { index: 0, count: 1 }

export function PackPage({ pack, isApart, onClose }: PackPageProps) {
  const formats = useFormats()
  const judged = useJudged(isApart)
  const heading = useRef<HTMLHeadingElement>(null)
  useWayBack(onClose)
  useLayoutEffect(() => heading.current?.focus({ preventScroll: true }), [pack.id])
  const name = packName(pack, edited.value.draft.packs.indexOf(pack))
  const Card = isApart ? ApartCard : PackVerdicts
  return (
    <section class="screen pack-page" aria-labelledby={`page-${pack.id}`}>
      <button type="button" class="quiet" onClick={onClose}>
        Back to packs
      </button>
      <div>
        <h2 id={`page-${pack.id}`} ref={heading} tabIndex={-1}>
          {pack.aside === undefined ? <bdi>{name}</bdi> : <s>{name}</s>}
        </h2>
        <Facts {...{ pack, judged, formats }} />
      </div>
      <div class="pack-card">
        <Card {...{ pack, judged, formats }} />
      </div>
      <p class="hint">{FIT_LINE}</p>
      <PackActions {...{ pack, name, isApart }} place={ALONE} onGone={onClose} />
      {isApart ? null : <CompareButton pack={pack} />}
      <EditFigures key={pack.id} pack={pack} />
      <OwnPack key={`own-${pack.id}`} pack={pack} />
    </section>
  )
}

function Facts({ pack, judged, formats }: { pack: DraftPack; judged: Judged; formats: Formats }) {
  const comparisons = judged.packs.get(pack.id)?.comparisons ?? []
  const others = takenOn(pack.id).filter(({ id }) => id !== openTrip.value?.id)
  const words = [
    ...(pack.starred ? ['★ starred'] : []),
    ...packMarks(pack),
    ...(pack.aside === undefined ? [] : ['set aside']),
    ...packWords(pack, comparisons),
  ]
  return (
    <>
      <p class="facts-line" data-figures="typed">
        {[packFacts(pack, formats), ...words].join(' · ')}
      </p>
      {others.length > 0 ? (
        <p class="hint">
          Also taken on: <bdi>{others.map(({ name }) => name).join(', ')}</bdi>.
        </p>
      ) : null}
    </>
  )
}

/** Folded away, unless there is nothing to look at before it is filled in. */
function EditFigures({ pack }: { pack: DraftPack }) {
  const [isNew] = useState(
    pack.bodyLitres === undefined && pack.setups.every(({ massKg }) => massKg === undefined),
  )
  return (
    <details class="more section" open={isNew}>
      <summary>
        <h3>Edit figures</h3>
      </summary>
      <div class="editor">
        <PackEditor pack={pack} />
      </div>
    </details>
  )
}
