// The hiker's own packings as one, from the shelf.

import { type OwnPacking, ownPacking } from '../../report/trust'
import { shelf } from '../../store'

/** Null while there are none. */
export const useOwnPacking = (): OwnPacking | null => ownPacking(shelf.value.packings)
