// Everything about one item: what it weighs and takes, where it rides, how it is used up.

import { useState } from 'preact/hooks'
import { Field } from '../../components/fields'
import { later } from '../../components/frame'
import { type DraftItem, defaults, FIELDS } from '../../plan'
import { openTrip, person } from '../../store'
import { FoodInto } from './FoodInto'
import { FuelFields } from './FuelFields'
import { useItemHome } from './item-home'
import { KindLitres } from './KindLitres'
import { OnShelf } from './OnShelf'
import { SizeFields } from './SizeFields'
import { Alternatives } from './swaps'

/** Fetched while the list is looked at: it stands above fields, which must not move once an item is open. */
export const KindPicker = later(async () => (await import('./KindPicker')).KindPicker)
const Owner = later(async () => (await import('../party')).Owner)
const Measure = later(async () => (await import('./Measure')).Measure)

const NOT_OF_A_KIND = Object.keys(FIELDS.item.litresFrom.choices).filter(from => from !== 'kind')

export function ItemEditor({ item }: { item: DraftItem }) {
  const { pathOf, inTrip } = useItemHome()
  const at = (...parts: string[]) => pathOf(item.id, ...parts)
  const use = item.use ?? 'kept'
  const per = use === 'daily' ? ', for one full day' : use === 'nightly' ? ', for one night' : ', each'
  return (
    <>
      <Field path={at('name')} />
      {item.name ? <KindPicker item={item} /> : null}
      <FoodInto item={item} />
      <div class="fields">
        {item.fuel ? null : <Field path={at('massKg')} also={per} />}
        {item.litresRange ? null : <Field path={at('litres')} also={per} />}
        <Field path={at('count')} />
        <Field path={at('group')} />
      </div>
      {item.litresRange ? <KindLitres item={item} at={at} per={per} /> : null}
      <MeasureIt item={item} path={at('measure')} />
      {inTrip ? <Field path={at('atHome')} /> : null}
      {inTrip && person.value !== null ? <Owner item={item} /> : null}
      <Field path={at('stow')} />
      <Field path={at('build')} usual={item.holdsLitres === undefined ? undefined : 'rigid'} />
      <Field path={at('use')} />
      {use === 'kept' ? null : <UseFields item={item} at={at} />}
      <details class="more">
        <summary>How well it is known</summary>
        <Field path={at('massFrom')} />
        {item.litresRange ? null : <Field path={at('litresFrom')} only={NOT_OF_A_KIND} />}
      </details>
      <details class="more">
        <summary>Containers, size, options</summary>
        <ContainerFields item={item} at={at} />
        <Field path={at('mayRideOutside')} />
        <Field path={at('optional')} />
      </details>
      {inTrip ? <Alternatives item={item} /> : null}
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
      {use === 'spread' ? null : <Field path={at('resupplied')} usual={defaults.resuppliedFor(use)} />}
      <div class="fields">
        <Field
          path={at('leaves')}
          usual={defaults.leavesFor(use)}
          usualFrom={use === 'daily' ? undefined : ''}
        />
        {use === 'daily' ? <Field path={at('kcalPerKg')} /> : null}
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
        <Field
          path={at('inside')}
          options={[
            { value: '', label: 'Nothing' },
            ...containers.map(container => ({ value: container.id, label: container.name || 'A container' })),
          ]}
        />
      ) : null}
      <div class="fields">
        <Field path={at('holdsWaterLitres')} />
        {item.inside === undefined ? <Field path={at('holdsLitres')} /> : null}
      </div>
      {rigid ? <SizeFields item={item} at={at} /> : null}
    </>
  )
}
