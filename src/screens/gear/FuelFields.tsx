// What a night's fuel must do; its mass then comes from the physics of heating water.

import { QuantityField, SelectField } from '../../parts/fields'
import { type DraftItem, defaults, LIMITS } from '../../plan'
import { actions } from '../../store'

interface Props {
  item: DraftItem
  at: (...parts: string[]) => string
}

const KINDS = [
  { value: 'gas', label: 'Gas' },
  { value: 'white-gas', label: 'White gas' },
  { value: 'ethanol', label: 'Alcohol (ethanol)' },
  { value: 'methanol', label: 'Methanol' },
  { value: 'tablet', label: 'Solid tablets' },
]

export function FuelFields({ item, at }: Props) {
  const name = item.name ?? 'fuel'
  if (!item.fuel)
    return (
      <button
        type="button"
        class="quiet"
        onClick={() => actions.setField(at('fuel'), { kind: 'gas', boilLitres: 1.5 }, null)}
      >
        Work out {name} from the water it must heat
      </button>
    )
  return (
    <fieldset>
      <legend>Fuel for one night</legend>
      <div class="fields">
        <SelectField path={at('fuel', 'kind')} label="Kind" usual="gas" options={KINDS} />
        <QuantityField
          path={at('fuel', 'boilLitres')}
          label="Water brought to the boil"
          kind="volume"
          limit={LIMITS.fuel.boilLitres}
          usual={defaults.FUEL.boilLitres}
        />
        <QuantityField
          path={at('fuel', 'meltLitres')}
          label="Water melted from snow"
          kind="volume"
          limit={LIMITS.fuel.meltLitres}
          usual={defaults.FUEL.meltLitres}
        />
        <QuantityField
          path={at('fuel', 'startC')}
          label="Water starts at"
          kind="temperature"
          limit={LIMITS.fuel.startC}
          usual={defaults.FUEL.startC}
        />
        <QuantityField
          path={at('fuel', 'altitudeM')}
          label="Altitude"
          kind="climb"
          limit={LIMITS.fuel.altitudeM}
          usual={defaults.FUEL.altitudeM}
        />
        <QuantityField
          path={at('fuel', 'efficiency')}
          label="Heat that reaches the water"
          kind="share"
          limit={LIMITS.fuel.efficiency}
          hint="Empty: 45 %, tablets 35 % (our judgement)."
        />
      </div>
      <button type="button" class="quiet" onClick={() => actions.setField(at('fuel'), undefined, null)}>
        Type its mass myself
      </button>
    </fieldset>
  )
}
