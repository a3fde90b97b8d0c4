// All persons' figures beside the need of one: how heavy, how much of their limit, how full, and whether the pack does.

import { useFormats } from '../../components/fields'
import { toTop } from '../../components/frame'
import { ANSWERS } from '../../report'
import { partyTold } from '../../report/party'
import { actions, person, reckoned } from '../../store'
import './party.css'

export function PartyFigures() {
  const formats = useFormats()
  const party = reckoned.value?.party
  const reckoning = party?.reckoning
  if (!party || !reckoning) return null
  const { plan, withoutMass } = party
  const told = partyTold({ plan, party: reckoning, withoutMass, proof: null }, formats)
  return (
    <section class="party-figures" data-figures="door">
      <div class="scroll">
        <table>
          <caption>Each one’s load and litres</caption>
          <thead>
            <tr>
              <th scope="col">Who</th>
              <th scope="col">Heaviest load</th>
              <th scope="col">Main body</th>
              <th scope="col">Pack</th>
            </tr>
          </thead>
          <tbody>
            {reckoning.people.map(({ id, need, pack }, i) => (
              <tr key={id} aria-current={person.value === id ? 'true' : undefined}>
                <th scope="row">
                  <button type="button" class="link" onClick={() => actions.setPerson(id)}>
                    {told.people[i]!.name}
                  </button>
                </th>
                <td>{told.people[i]!.load}</td>
                <td>{formats.litresUp(need.bodyLitres)}</td>
                <td>
                  {pack
                    ? `${ANSWERS[pack.answer].mark} ${pack.name}: ${ANSWERS[pack.answer].short}`
                    : 'none taken'}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <button type="button" class="quiet" onClick={() => toTop('split')}>
        Who carries what
      </button>
    </section>
  )
}
