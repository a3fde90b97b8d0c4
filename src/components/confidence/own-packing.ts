// The hiker's own packings, from the shelf.

import { type OwnPackings, ownPackings } from '../../report/confidence'
import { shelf } from '../../store'

export const useOwnPackings = (): OwnPackings => ownPackings(shelf.value.packings)
