// Everything about one item: what it weighs and takes, where it rides, how it is used up.

import { useState } from 'preact/hooks'
import {
  ChoiceField,
  QuantityField,
  SelectField,
  TextField,
  ToggleField,
  YesNoField,
} from '../../components/fields'
import { later } from '../../components/frame'
import { type DraftItem, defaults, LIMITS } from '../../plan'
import { openTrip } from '../../store'
import { FoodInto } from './FoodInto'
import { FuelFields } from './FuelFields'
import { useItemHome } from './item-home'
import { KindLitres } from './KindLitres'
import { OnShelf } from './OnShelf'
import { SizeFields } from './SizeFields'

/** Fetched while the list is looked at: it stands above fields, which must not move once an item is open. */
export const KindPicker = later(async () => (await import('./KindPicker')).KindPicker)
const Measure = later(async () => (await import('./Measure')).Measure)

export function ItemEditor({ item }: { item: DraftItem }) {
  const { pathOf, inTrip } = useItemHome()
  const at = (...parts: string[]) => pathOf(item.id, ...parts)
  const use = item.use ?? 'kept'
  const per = use === 'daily' ? ', for one full day' : use === 'nightly' ? ', for one night' : ', each'
  return (
    <>
      <TextField path={at('name')} label="Name" />
      {item.name ? <KindPicker item={item} /> : null}
      <FoodInto item={item} />
      <div class="fields">
        {item.fuel ? null : (
          <QuantityField
            path={at('massKg')}
            label={`Mass${per}`}
            kind="mass"
            fine
            limit={LIMITS.item.massKg}
          />
        )}
        {item.litresRange ? null : (
          <QuantityField
            path={at('litres')}
            label={`Packed volume${per}`}
            kind="volume"
            limit={LIMITS.item.litres}
          />
        )}
        <QuantityField
          path={at('count')}
          label="How many"
          kind="count"
          limit={LIMITS.item.count}
          usual={defaults.ITEM.count}
        />
        <TextField path={at('group')} label="Group" />
      </div>
      {item.litresRange ? <KindLitres item={item} at={at} per={per} /> : null}
      <MeasureIt item={item} path={at('measure')} />
      <ChoiceField
        path={at('stow')}
        label="Where it rides"
        usual={defaults.ITEM.stow}
        options={[
          { value: 'main-body', label: 'Main body' },
          { value: 'outside-pocket', label: 'Pocket' },
          { value: 'strapped-on', label: 'Strapped on' },
          { value: 'worn', label: 'Worn, in hand' },
        ]}
      />
      <ChoiceField
        path={at('build')}
        label="Does it give way?"
        usual={item.holdsLitres === undefined ? defaults.ITEM.build : 'rigid'}
        options={[
          { value: 'soft', label: 'Soft, fills gaps' },
          { value: 'rigid', label: 'Rigid' },
        ]}
      />
      <ChoiceField
        path={at('use')}
        label="Used up"
        usual={defaults.ITEM.use}
        options={[
          { value: 'kept', label: 'Not used up' },
          { value: 'daily', label: 'Daily (food)' },
          { value: 'nightly', label: 'Nightly (fuel)' },
          { value: 'spread', label: 'Over the trip' },
        ]}
      />
      {use === 'kept' ? null : <UseFields item={item} at={at} />}
      <details class="more">
        <summary>How well it is known</summary>
        <ChoiceField
          path={at('massFrom')}
          label="The mass is"
          usual={defaults.ITEM.massFrom}
          options={[
            { value: 'scale', label: 'Weighed' },
            { value: 'stated', label: 'Stated' },
            { value: 'guess', label: 'A guess' },
          ]}
        />
        {item.litresRange ? null : (
          <ChoiceField
            path={at('litresFrom')}
            label="The litres are"
            usual={defaults.ITEM.litresFrom}
            options={[
              { value: 'filled', label: 'Measured by filling' },
              { value: 'dimensions', label: 'From its dimensions' },
              { value: 'stated', label: 'Stated' },
              { value: 'guess', label: 'A guess' },
            ]}
          />
        )}
      </details>
      <details class="more">
        <summary>Containers, size, options</summary>
        <ContainerFields item={item} at={at} />
        <YesNoField
          path={at('mayRideOutside')}
          label="May ride outside if need be?"
          hint="Not said: soft things may, and long slim ones."
        />
        <ToggleField
          path={at('optional')}
          label="Could stay at home"
          usual={defaults.ITEM.optional}
          hint="It is then named first where something has to stay."
        />
      </details>
      {inTrip ? <OnShelf item={item} /> : null}
    </>
  )
}

/** Fetched when it is first opened. The path is no field's, but leads here all the same. */
function MeasureIt({ item, path }: { item: DraftItem; path: string }) {
  const [open, setOpen] = useState(false)
  return (
    <details class="more" open={open} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary data-path={path}>Measure it</summary>
      {open ? <Measure item={item} /> : null}
    </details>
  )
}

interface PartProps {
  item: DraftItem
  at: (...parts: string[]) => string
}

function UseFields({ item, at }: PartProps) {
  const use = item.use ?? 'kept'
  return (
    <>
      {use === 'nightly' ? <FuelFields item={item} at={at} /> : null}
      {use === 'spread' ? null : (
        <ToggleField
          path={at('resupplied')}
          label="Bought again at each resupply"
          usual={defaults.resuppliedFor(use)}
        />
      )}
      <div class="fields">
        <QuantityField
          path={at('leaves')}
          label="Stays as rubbish"
          kind="share"
          limit={LIMITS.item.leaves}
          usual={defaults.leavesFor(use)}
          usualFrom={use === 'daily' ? defaults.DEFAULT_ORIGINS.leaves : undefined}
        />
        {use === 'daily' ? (
          <QuantityField
            path={at('kcalPerKg')}
            label="Energy"
            kind="energyDensity"
            limit={LIMITS.item.kcalPerKg}
            hint="Printed on the packet. Needed for rations by energy."
          />
        ) : null}
      </div>
    </>
  )
}

function ContainerFields({ item, at }: PartProps) {
  const { inTrip } = useItemHome()
  const containers = (inTrip ? (openTrip.value?.draft.gear ?? []) : []).filter(
    other => other.holdsLitres !== undefined && other.id !== item.id,
  )
  const rigid = item.build === 'rigid' || item.holdsLitres !== undefined
  return (
    <>
      {item.holdsLitres === undefined && containers.length > 0 ? (
        <SelectField
          path={at('inside')}
          label="Rides inside"
          usual=""
          options={[
            { value: '', label: 'Nothing' },
            ...containers.map(container => ({ value: container.id, label: container.name || 'A container' })),
          ]}
        />
      ) : null}
      <div class="fields">
        <QuantityField
          path={at('holdsWaterLitres')}
          label="Holds water, each"
          kind="volume"
          limit={LIMITS.item.holdsWaterLitres}
        />
        {item.inside === undefined ? (
          <QuantityField
            path={at('holdsLitres')}
            label="Holds things, each"
            kind="volume"
            limit={LIMITS.item.holdsLitres}
            hint="The inner room of a hard container."
          />
        ) : null}
      </div>
      {rigid ? <SizeFields item={item} at={at} /> : null}
    </>
  )
}
