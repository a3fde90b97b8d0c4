// Of several people the one whose figures are shown everywhere; kept on this device.

import { Choice } from '../../components/fields'
import { personName } from '../../plan'
import { actions, openTrip, person } from '../../store'
import './party.css'

export function Whose() {
  const draft = openTrip.value?.draft
  if (!draft?.people || person.value === null) return null
  return (
    <div class="whose">
      <Choice
        label="Figures of"
        options={draft.people.map(({ id }) => ({ value: id, label: personName(draft, id) }))}
        chosen={person.value}
        onChoose={actions.setPerson}
      />
    </div>
  )
}
