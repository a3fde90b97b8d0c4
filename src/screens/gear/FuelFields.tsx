// What a night's fuel must do; its mass then comes from the physics of heating water, and gas from whole cartridges.

import { Field, useEdited, useFormats } from '../../components/fields'
import { Why } from '../../components/why'
import type { DraftItem } from '../../plan'

import { addCartridges, fuelKgOf, gasCartridges, hasCartridges, piecesText } from '../../report/why'
import { actions, newId, openTrip, reckoned } from '../../store'
import { counted } from '../../units'
import { useItemHome } from './item-home'

interface Props {
  item: DraftItem
  at: (...parts: string[]) => string
}

export function FuelFields({ item, at }: Props) {
  const edited = useEdited()
  const { inTrip } = useItemHome()
  const name = item.name ?? 'fuel'
  if (!item.fuel)
    return (
      <button
        type="button"
        class="quiet"
        onClick={() => edited.set(at('fuel'), { kind: 'gas', boilLitres: 1.5 }, null)}
      >
        Work out {name} from the water it must heat
      </button>
    )
  return (
    <fieldset>
      <legend>Fuel for one night</legend>
      <div class="fields">
        <Field path={at('fuel', 'kind')} usual="gas" />
        <Field path={at('fuel', 'boilLitres')} />
        <Field path={at('fuel', 'meltLitres')} />
        <Field path={at('fuel', 'startC')} />
        <Field path={at('fuel', 'altitudeM')} />
        <Field path={at('fuel', 'efficiency')} />
      </div>
      {inTrip ? <NightsFuel item={item} /> : null}
      {inTrip ? <Cartridges item={item} /> : null}
      <button type="button" class="quiet" onClick={() => edited.set(at('fuel'), undefined, null)}>
        Type its mass myself
      </button>
    </fieldset>
  )
}

function NightsFuel({ item }: { item: DraftItem }) {
  const formats = useFormats()
  const kg = reckoned.value ? fuelKgOf(reckoned.value.plan, item.id) : null
  if (kg === null) return null
  return (
    <div data-figures="why">
      <Why about={{ kind: 'fuel', item: item.id }} figure={`${formats.gear(kg)} for one night`} />
    </div>
  )
}

/** Gas is bought in whole cartridges, whose empties are gear. */
function Cartridges({ item }: { item: DraftItem }) {
  const formats = useFormats()
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const wanted = gasCartridges(open.plan, open.reckoned.reckoning, item.id)
  if (!wanted) return null
  const { nights, needG, choice } = wanted
  const need = `${formats.gear(needG / 1000)} of gas needed with margin for ${counted(nights, 'night')}`
  if (!choice) return <p class="hint">{need}: more than cartridges are worked out for (up to 5 kg).</p>
  const gear = openTrip.value?.draft.gear ?? []
  return (
    <div class="figures" data-figures="why">
      <p>
        <strong>{piecesText(choice)}:</strong> {need}; the empties stay in the load until a bin.
      </p>
      <p class="hint">
        {formats.gear(choice.emptyG / 1000)} and {formats.litres(choice.outerLitres)} for the empties are our
        estimate, not checked against a source: weigh and measure yours. As gear they count to the end of the
        trip.
        {item.litres ? ' The gas is inside them: give it 0 L.' : ''}
      </p>
      {hasCartridges(gear, choice) ? (
        <p class="hint">They are in the gear.</p>
      ) : (
        <button
          type="button"
          class="quiet"
          onClick={() =>
            actions.edit('Add gas cartridges', draft =>
              addCartridges(draft, choice, { after: item.id, newId }),
            )
          }
        >
          Add these cartridges to the gear
        </button>
      )}
      <Why about={{ kind: 'cartridges', item: item.id }} figure="Which cartridges" />
    </div>
  )
}
