// Before anybody else is named: one tap to walk with somebody.

import { addPerson } from '../../plan'
import { actions, newId } from '../../store'

const walkWithSomebody = () => actions.edit('Walk with somebody', draft => addPerson(draft, newId()))

export function MakeParty() {
  return (
    <>
      <p>
        You walk alone: you carry it all. With others, what is everybody’s is shared out by what each can
        carry.
      </p>
      <button type="button" class="primary" onClick={walkWithSomebody}>
        Walk with somebody
      </button>
    </>
  )
}
