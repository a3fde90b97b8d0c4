// Gear: the list by group with its masses and litres, one line to add to it, each item open to edit in place.

import { useEffect, useMemo } from 'preact/hooks'
import { useFormats, useSystem } from '../../components/fields'
import { toTop } from '../../components/frame'
import { itemFacts } from '../../components/item-words'
import {
  type Entry,
  entryProps,
  Grip,
  GroupHeading,
  LongList,
  type Mover,
  movedTo,
  type Spot,
  useMover,
} from '../../components/long-list'
import { Row } from '../../components/pieces'
import { Why } from '../../components/why'
import { type DraftItem, defaults, personName } from '../../plan'
import { type Cost, costText, formatsIn } from '../../report'
import { actions, openTrip, person, reckoned } from '../../store'
import { capital, counted, type System } from '../../units'
import { type Detail, rowActions } from '../rows'
import { HomeButton, HomeWords } from './AtHome'
import { ItemEditor, KindPicker } from './ItemEditor'
import { addBelow, EDITS } from './item-edits'
import { ListDoors } from './ListDoors'
import { Order, WhyCosts } from './OrderChoice'
import { gearOrder, sortedByRoom } from './order'
import { Packing } from './Packing'
import { ShelfDoors } from './ShelfDoors'
import { ShelfOffers } from './ShelfOffers'
import { OrLine } from './swaps'
import { GearDesk } from './table'
import { useCosts } from './use-costs'

/** `isDesk`: the gear is a table, and what is open stands beside it. */
export function GearScreen({ detail, onDetail, isDesk = false }: Detail & { isDesk?: boolean }) {
  const system = useSystem()
  const mover = useMover()
  useEffect(() => void KindPicker.ahead(), [])
  const gear = openTrip.value?.draft.gear ?? []
  const costs = useCosts(gearOrder.value === 'room')
  const entries = useMemo(
    (): Entry[] => (costs ? sortedByRoom(gear, costs).map(({ id }) => ({ key: id })) : entriesOf(gear)),
    [gear, costs],
  )
  const groups = useMemo(() => groupsIn(entries, gear), [entries, gear])
  const indexOf = useMemo(() => new Map(gear.map(({ id }, index) => [id, index])), [gear])
  const opened = detail?.startsWith('gear/') ? detail.slice('gear/'.length) : null
  mover.now.moving = costs ? null : { entries, onMove: (id, spot) => move(gear[indexOf.get(id) ?? -1], spot) }
  const row = (id: string, place: { at: number; of: number | undefined }, isOpen: boolean) => {
    const index = indexOf.get(id)!
    return (
      <ItemRow
        key={id}
        item={gear[index]!}
        {...place}
        index={index}
        count={gear.length}
        open={isOpen}
        onDetail={onDetail}
        system={system}
        mover={costs || isDesk ? null : mover}
        cost={costs?.get(id)}
        whose={whoseOf(gear[index]!)}
      />
    )
  }
  return (
    <div class={isDesk ? 'screen gear-screen' : 'screen'}>
      <h2>Gear</h2>
      <Totals gear={gear} />
      {person.value === null ? null : (
        <button type="button" onClick={() => toTop('split')}>
          Who carries what
        </button>
      )}
      <ShelfOffers />
      {gear.length > 1 ? (
        <div class="gear-view">
          <HomeWords gear={gear} />
          <Order count={gear.length} />
        </div>
      ) : null}
      <div class="costed" data-figures={costs ? 'why' : undefined}>
        {costs ? <WhyCosts costs={costs} gear={gear} /> : null}
        {isDesk ? (
          <GearDesk
            {...{ gear, entries, groups, costs, mover }}
            opened={opened !== null && indexOf.has(opened) ? opened : null}
            onOpen={id => onDetail(id === null ? null : `gear/${id}`)}
            drawOpen={id => row(id, { at: 0, of: undefined }, true)}
          />
        ) : (
          <LongList
            entries={entries}
            open={opened}
            mover={mover}
            draw={(at, of) => {
              const { key, heading } = entries[at]!
              if (heading === undefined) return row(key, { at, of }, opened === key)
              return (
                <GroupHeading
                  key={key}
                  id={key}
                  name={heading}
                  at={at}
                  of={of}
                  aside={<HomeButton items={groups.get(key)!} name={heading || 'Other'} />}
                />
              )
            }}
          />
        )}
      </div>
      {isDesk ? null : (
        <button type="button" class="primary" onClick={() => onDetail(`gear/${addBelow(gear)}`)}>
          Add an item
        </button>
      )}
      <ShelfDoors />
      <ListDoors />
      <Packing />
    </div>
  )
}

/** "Ada’s, carried by Bo": of several people whose it is and who has it; of a lone hiker nothing. */
function whoseOf({ id, owner, inside, atHome }: DraftItem): string {
  const draft = openTrip.value?.draft
  const carrier = reckoned.value?.party?.carriers.get(id)
  if (!draft?.people || carrier === undefined || inside !== undefined || atHome) return ''
  if (owner === carrier) return `${personName(draft, owner)}’s`
  const whose = owner === undefined ? '' : `${personName(draft, owner)}’s, `
  return `${whose}carried by ${personName(draft, carrier)}`
}

/** The items with a heading wherever the group changes; those without a group need one only below others. */
function entriesOf(gear: readonly DraftItem[]): Entry[] {
  return gear.flatMap((item, index): Entry[] => {
    const group = item.group ?? ''
    const isNew = group !== (gear[index - 1]?.group ?? '')
    const row = { key: item.id }
    return isNew ? [{ key: `heading/${item.id}`, heading: group }, row] : [row]
  })
}

/** The things under each heading, by its key. */
function groupsIn(entries: readonly Entry[], gear: readonly DraftItem[]): ReadonlyMap<string, DraftItem[]> {
  const items = new Map(gear.map(item => [item.id, item]))
  const groups = new Map<string, DraftItem[]>()
  let last: DraftItem[] = []
  for (const { key, heading } of entries) {
    if (heading === undefined) last.push(items.get(key)!)
    else {
      last = []
      groups.set(key, last)
    }
  }
  return groups
}

/** An item belongs to the group it is moved under. */
function move(item: DraftItem | undefined, spot: Spot) {
  if (!item) return
  const { group: _group, ...rest } = item
  const moved = spot.under ? { ...rest, group: spot.under } : rest
  const label = `Move item ${item.name || 'without a name'}`
  actions.edit(label, draft => ({ ...draft, gear: movedTo(draft.gear, moved, spot) }))
}

function Totals({ gear }: { gear: DraftItem[] }) {
  const formats = useFormats()
  if (gear.length === 0)
    return <p>List what you take, with mass and packed litres. Guesses are a good start.</p>
  const result = reckoned.value?.reckoned
  if (!result?.ok) return null
  const { baseKg, wornKg } = result.reckoning.need
  const draft = openTrip.value?.draft
  const carrierWords = () => (draft && person.value !== null ? `${personName(draft, person.value)}: ` : '')
  return (
    <div data-figures="why">
      <Why
        about={{ kind: 'base-weight' }}
        figure={`${counted(gear.length, 'item')}. ${carrierWords()}Base weight ${formats.kg(baseKg)}, worn ${formats.kg(wornKg)}.`}
      />
    </div>
  )
}

interface ItemRowProps {
  item: DraftItem
  /** Its place among the entries of the list, headings and all; `of` how many where not all are drawn. */
  at: number
  of: number | undefined
  /** Its place in the gear. */
  index: number
  count: number
  open: boolean
  onDetail: Detail['onDetail']
  system: System
  /** Null: rows stand in an order of their own, and cannot be moved. */
  mover: Mover | null
  cost: Cost | undefined
  whose: string
}

/** Drawn again only when something of its own changes: lists of thousands stay quick. */
function ItemRow(props: ItemRowProps) {
  return useMemo(() => <DrawnItemRow {...props} />, Object.values(props))
}

function DrawnItemRow({
  item,
  at,
  of,
  index,
  count,
  open,
  onDetail,
  system,
  mover,
  cost,
  whose,
}: ItemRowProps) {
  const path = `gear/${item.id}`
  const name = item.name || `Item ${index + 1}`
  const step = mover ? (key: string) => mover.step({ key: item.id, name }, key) : undefined
  return (
    <Row
      id={item.id}
      open={open}
      onToggle={() => onDetail(open ? null : path)}
      summary={<Summary {...{ item, name, system, cost, whose }} />}
      aside={<HomeButton items={[item]} name={name} />}
      below={item.swaps ? <OrLine item={item} /> : undefined}
      set={item.atHome ? 'aside' : undefined}
      grip={mover ? <Grip mover={mover} id={item.id} name={name} /> : undefined}
      entry={entryProps(item.id, at, of)}
      actions={rowActions(EDITS, { id: item.id, name, index, count, ...(step && { step }) })}
    >
      <ItemEditor item={item} />
    </Row>
  )
}

type SummaryProps = Pick<ItemRowProps, 'item' | 'system' | 'cost' | 'whose'> & { name: string }

function Summary({ item, name, system, cost, whose }: SummaryProps) {
  const count = item.count ?? defaults.ITEM.count
  return (
    <>
      <bdi class="name">
        {count === 1 ? '' : `${count} × `}
        {name}
      </bdi>
      <span class="facts-line" data-figures="typed">
        {[...itemFacts(item, system), whose, item.atHome ? 'left at home' : ''].filter(Boolean).join(', ')}
      </span>
      {cost ? <span class="cost">{capital(costText(cost, formatsIn(system)))}</span> : null}
    </>
  )
}
