// From a pack to those it stands beside.

import { toTop } from '../../../components/frame'
import type { DraftPack } from '../../../plan'
import { chosenSetups, keyOf, setBeside } from './chosen'

/** Puts the pack, as it is first set up, beside those that are chosen. */
export function CompareButton({ pack }: { pack: DraftPack }) {
  const [setup] = pack.setups
  if (!setup) return null
  const others = chosenSetups.value.filter(key => !key.startsWith(keyOf(pack.id, ''))).length
  const compare = () => {
    if (!pack.setups.some(({ id }) => chosenSetups.value.includes(keyOf(pack.id, id))))
      setBeside(keyOf(pack.id, setup.id))
    toTop('packs-beside')
  }
  return (
    <div class="actions">
      <button type="button" class="quiet" onClick={compare}>
        Compare with {others > 0 ? `${others} chosen` : 'others'}
      </button>
    </div>
  )
}
