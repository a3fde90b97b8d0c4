// What is shown without any trip; the first page has it before the app (`ahead.tsx`).

import { Notices, UndoBar } from '../../components/frame'
import { Welcome } from './Welcome'

export function EmptyApp() {
  return (
    <>
      <Notices />
      <Welcome />
      <div class="foot">
        <UndoBar />
      </div>
    </>
  )
}
