// What was just taken away in the open trip, with what that changed in its answer.

import { UndoBar } from './UndoBar'
import { useLastChange } from './use-last-change'

export const TripUndoBar = () => <UndoBar change={useLastChange().full} />
