// Gear: the list by group with its masses and litres, one line to add to it, each item open to edit in place.

import { useMemo } from 'preact/hooks'
import { useSystem } from '../../parts/fields'
import { Row } from '../../parts/pieces'
import { addItem, type DraftItem, duplicateItem, moveItem, removeItem } from '../../plan'
import { shownIn } from '../../report'
import { actions, newId, openTrip, reckoned } from '../../store'
import type { System } from '../../units'
import { type Detail, firstId, rowActions } from '../rows'
import { ItemEditor } from './ItemEditor'
import { rangeOf } from './kind-words'
import { ListDoors } from './ListDoors'
import { Packing } from './Packing'

const EDITS = { what: 'item', move: moveItem, duplicate: duplicateItem, remove: removeItem }

export function GearScreen({ detail, onDetail }: Detail) {
  const system = useSystem()
  const gear = openTrip.value?.draft.gear ?? []
  return (
    <div class="screen">
      <h2>Gear</h2>
      <Totals gear={gear} />
      <ul class="rows">
        {gear.map((item, index) => (
          <ItemRow
            key={item.id}
            item={item}
            heading={item.group !== gear[index - 1]?.group ? item.group : undefined}
            index={index}
            count={gear.length}
            open={detail === `gear/${item.id}`}
            onDetail={onDetail}
            system={system}
          />
        ))}
      </ul>
      <button type="button" class="primary" onClick={() => add(gear, onDetail)}>
        Add an item
      </button>
      <ListDoors />
      <Packing />
    </div>
  )
}

/** A new item joins the last group, and opens to be filled in. */
function add(gear: DraftItem[], onDetail: Detail['onDetail']) {
  const id = newId()
  const group = gear.at(-1)?.group
  actions.edit('Add an item', draft =>
    addItem(draft, firstId(id), group === undefined ? {} : { with: { group } }),
  )
  onDetail(`gear/${id}`)
}

function Totals({ gear }: { gear: DraftItem[] }) {
  const shown = shownIn(useSystem())
  if (gear.length === 0)
    return (
      <p>List what you take, each with its mass and the litres it packs down to. Guesses do to begin with.</p>
    )
  const result = reckoned.value?.reckoned
  if (!result?.ok) return null
  const { baseKg, wornKg } = result.reckoning.need
  return (
    <p>
      {gear.length} {gear.length === 1 ? 'item' : 'items'}. Base weight {shown.kg(baseKg)}, worn{' '}
      {shown.kg(wornKg)}.
    </p>
  )
}

interface ItemRowProps {
  item: DraftItem
  heading: string | undefined
  index: number
  count: number
  open: boolean
  onDetail: Detail['onDetail']
  system: System
}

/** Drawn again only when something of its own changes: lists of thousands stay quick. */
function ItemRow(props: ItemRowProps) {
  return useMemo(() => <DrawnItemRow {...props} />, Object.values(props))
}

function DrawnItemRow({ item, heading, index, count, open, onDetail, system }: ItemRowProps) {
  const path = `gear/${item.id}`
  const name = item.name || `Item ${index + 1}`
  return (
    <>
      {heading === undefined ? null : (
        <li class="group">
          <h3>{heading || 'Other'}</h3>
        </li>
      )}
      <Row
        id={item.id}
        open={open}
        onToggle={() => onDetail(open ? null : path)}
        summary={<Summary item={item} name={name} system={system} />}
        actions={rowActions(EDITS, { id: item.id, name, index, count })}
      >
        <ItemEditor item={item} />
      </Row>
    </>
  )
}

const PLACES = {
  'main-body': '',
  'outside-pocket': 'pocket',
  'strapped-on': 'strapped on',
  worn: 'worn',
} as const
const USES = { kept: '', daily: 'a day', nightly: 'a night', spread: 'over the trip' } as const

function Summary({ item, name, system }: { item: DraftItem; name: string; system: System }) {
  const shown = shownIn(system)
  const count = item.count ?? 1
  const mass = item.fuel
    ? 'mass from its use'
    : item.massKg === undefined
      ? 'no mass'
      : shown.gear(item.massKg)
  const facts = [
    [mass, USES[item.use ?? 'kept']].filter(Boolean).join(' '),
    litresText(item, system),
    PLACES[item.stow ?? 'main-body'],
  ]
  return (
    <>
      <bdi class="name">
        {count === 1 ? '' : `${count} × `}
        {name}
      </bdi>
      <span class="facts-line">{facts.filter(Boolean).join(', ')}</span>
    </>
  )
}

/** A range of a kind stands for the litres while it is there. */
function litresText({ litres, litresRange }: DraftItem, system: System): string {
  if (litresRange)
    return `${rangeOf({ low: litresRange.low ?? 0, high: litresRange.high ?? 0 }, system)} by kind`
  if (litres === undefined) return 'no litres'
  return litres === 0 ? '' : shownIn(system).litres(litres)
}
