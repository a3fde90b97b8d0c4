// Who walks together, beside the trip: name, body mass and age of each; the rest is folded.

import { Field } from '../../components/fields'
import { toTop } from '../../components/frame'
import {
  addPerson,
  canAddPerson,
  type DraftPerson,
  defaults,
  FIELDS,
  fieldPath,
  personName,
  removePerson,
} from '../../plan'
import { actions, newId, openTrip } from '../../store'
import './party.css'

export function People() {
  const draft = openTrip.value?.draft
  const people = draft?.people ?? []
  if (!draft) return null
  return (
    <section class="people">
      <h3>Who walks</h3>
      {people.map(person => (
        <OnePerson key={person.id} person={person} name={personName(draft, person.id)} />
      ))}
      <div class="actions">
        <button type="button" onClick={() => toTop('split')}>
          Who carries what
        </button>
        {canAddPerson(draft) ? (
          <button
            type="button"
            class="quiet"
            onClick={() => actions.edit('Add a person', made => addPerson(made, newId()))}
          >
            Add another
          </button>
        ) : null}
      </div>
    </section>
  )
}

function OnePerson({ person, name }: { person: DraftPerson; name: string }) {
  const at = (field: string) => fieldPath('people', person.id, field)
  return (
    <fieldset class="person">
      <legend>{name}</legend>
      <div class="fields">
        <Field path={at('name')} />
        <Field path={at('massKg')} />
        <Field path={at('ageYears')} />
      </div>
      <details class="more">
        <summary>More about {name}</summary>
        <div class="fields">
          <Field
            path={at('loadShareLimit')}
            usual={defaults.loadShareLimitFor(person.ageYears ?? null)}
            usualFrom={`of body mass, ${FIELDS.carrier.loadShareLimit.origin}`}
          />
          <Field path={at('waterShare')} hint="100 %: as much as the trip’s water habits say." />
          <Field path={at('heightCm')} />
        </div>
        <Field path={at('sex')} />
        <button
          type="button"
          class="quiet"
          onClick={() => actions.edit(`Remove ${name}`, draft => removePerson(draft, person.id))}
        >
          Remove {name}
        </button>
        <p class="hint">What {name} wears then goes to the first person, the rest becomes everybody’s.</p>
      </details>
    </fieldset>
  )
}
