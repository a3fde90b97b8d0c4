// Packs: each with its set-ups judged for this trip, and its figures one tap away.

import { useSystem } from '../../parts/fields'
import { Row } from '../../parts/pieces'
import { addPack, type DraftPack, duplicatePack, movePack, removePack } from '../../plan'
import { type Shown, shownIn } from '../../report'
import { actions, newId, openTrip, reckoned } from '../../store'
import { type Detail, firstId, rowActions } from '../rows'
import { PackEditor } from './PackEditor'
import { Thresholds } from './Thresholds'
import { Verdicts } from './Verdicts'

const EDITS = { what: 'pack', move: movePack, duplicate: duplicatePack, remove: removePack }

export function PacksScreen({ detail, onDetail }: Detail) {
  const shown = shownIn(useSystem())
  const packs = openTrip.value?.draft.packs ?? []
  const add = () => {
    const id = newId()
    actions.edit('Add a pack', draft => addPack(draft, firstId(id)))
    onDetail(`packs/${id}`)
  }
  return (
    <div class="screen">
      <h2>Packs</h2>
      {packs.length === 0 ? (
        <p>Type a few figures from a pack’s tag to see whether it does for this trip.</p>
      ) : null}
      <ul class="rows">
        {packs.map((pack, index) => {
          const path = `packs/${pack.id}`
          const name = pack.name || `Pack ${index + 1}`
          return (
            <Row
              key={pack.id}
              id={pack.id}
              open={detail === path}
              onToggle={() => onDetail(detail === path ? null : path)}
              summary={<Summary pack={pack} name={name} shown={shown} />}
              below={<Judged id={pack.id} shown={shown} />}
              actions={rowActions(EDITS, { id: pack.id, name, index, count: packs.length })}
            >
              <PackEditor pack={pack} />
            </Row>
          )
        })}
      </ul>
      <button type="button" class="primary" onClick={add}>
        Add a pack
      </button>
      <Thresholds />
    </div>
  )
}

function Summary({ pack, name, shown }: { pack: DraftPack; name: string; shown: Shown }) {
  const masses = pack.setups.flatMap(setup => (setup.massKg === undefined ? [] : [shown.gear(setup.massKg)]))
  return (
    <>
      <bdi class="name">{name}</bdi>
      <span class="facts-line">
        {[pack.bodyLitres === undefined ? 'no litres yet' : shown.litres(pack.bodyLitres), ...masses].join(
          ', ',
        )}
      </span>
    </>
  )
}

/** The verdicts; nothing while the pack lacks what it takes to judge it: the Need says what. */
function Judged({ id, shown }: { id: string; shown: Shown }) {
  const open = reckoned.value
  const packIndex = open ? open.packIds.indexOf(id) : -1
  if (!open?.reckoned.ok || packIndex < 0)
    return <p class="hint">Not judged yet: it needs its main body litres and its mass.</p>
  return <Verdicts packIndex={packIndex} plan={open.plan} reckoning={open.reckoned.reckoning} shown={shown} />
}
