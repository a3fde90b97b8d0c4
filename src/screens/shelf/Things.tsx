// The things on the shelf: the search above, the list below, and what is done with those that are chosen.

import { useEffect, useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { GroupHeading, LongList, movedTo, type Spot, useMover } from '../../components/long-list'
import { addThing, setGroup, type Thing } from '../../plan/shelf'
import { actions, newId, shelf } from '../../store'
import { counted } from '../../units'
import { ChangeMany } from './ChangeMany'
import { ChooseAll, ChosenBar } from './ChosenBar'
import { toShelfHead } from './heads'
import { useHeldOrder } from './held-order'
import { PackMany } from './PackMany'
import { Stays } from './Stays'
import { TableDoors } from './TableDoors'
import { ThingRow } from './ThingRow'
import { nameOf } from './thing-words'
import { inOpenTrip, thingsById, tripsUsing } from './uses'
import { ViewBar } from './ViewBar'
import { chooseNone, chosen, entriesOf, found, look, ordered, view } from './view'

export interface ShelfPart {
  detail: string | null
  onDetail: (detail: string | null) => void
  /** Goes to a detail and says what was done. */
  onSaid: (said: string, detail: string | null) => void
}

export function Things({ detail, onDetail, onSaid }: ShelfPart) {
  const { things } = shelf.value
  const { order, withRetired, sought } = view.value
  const [step, setStep] = useState<'choose' | 'pack' | 'change'>('choose')
  const isChoosing = detail === 'choose' && things.length > 0
  const opened = detail?.startsWith('thing/') ? detail.slice('thing/'.length) : null
  const { things: inOrder, shownGroup, letGo } = useHeldOrder(things, order, opened)
  // What is open stays on show while it is edited, though it be retired or renamed.
  const shown = useMemo(() => {
    const all = found(inOrder, { sought, order, withRetired })
    const shown = new Set(all)
    return inOrder.filter(thing => thing.id === opened || shown.has(thing))
  }, [inOrder, sought, order, withRetired, opened])

  const done = (said: string) => {
    chooseNone()
    look({ sought: '' })
    setStep('choose')
    onSaid(said, null)
  }
  if (isChoosing && step !== 'choose') {
    const { value: byId } = thingsById
    const ids = [...chosen.value].filter(id => byId.has(id))
    const back = () => {
      setStep('choose')
      toShelfHead()
    }
    return step === 'change' ? (
      <ChangeMany ids={ids} onDone={done} onBack={back} />
    ) : (
      <PackMany
        title={`Pack ${counted(ids.length, 'item')}`}
        lines={ids.map(thing => ({ thing }))}
        onDone={done}
        onBack={back}
      />
    )
  }

  const add = () => {
    const id = newId()
    const { sought } = view.peek()
    // What was sought and not found is what is wanted.
    const name = shown.length === 0 ? sought.trim() : ''
    const group = shown.at(-1)?.item.group
    actions.editShelf('Add an item to the shelf', before =>
      addThing(
        before,
        { newId: () => id, now: Date.now() },
        { with: { ...(name && { name }), ...(group && order === 'group' && { group }) } },
      ),
    )
    if (!name) look({ sought: '' })
    onDetail(`thing/${id}`)
    // Its name comes first.
    requestAnimationFrame(() => document.querySelector<HTMLElement>(`#edit-${id} input`)?.focus())
  }
  return (
    <>
      {things.length === 0 ? (
        <p>
          Everything you own, each weighed once: pack a trip from it with a few taps. Put the gear of a trip
          on it, or add items here.
        </p>
      ) : (
        <Stays>
          <ViewBar shown={shown.length}>
            {isChoosing ? (
              <ChooseAll shownIds={shown.map(({ id }) => id)} />
            ) : (
              <button type="button" class="quiet" onClick={() => onDetail('choose')}>
                Choose
              </button>
            )}
          </ViewBar>
          {isChoosing ? (
            <ChosenBar
              onPack={() => setStep('pack')}
              onChange={() => setStep('change')}
              onDone={() => {
                chooseNone()
                onDetail(null)
              }}
            />
          ) : null}
        </Stays>
      )}
      <List {...{ shown, shownGroup, letGo, opened, isChoosing, onDetail }} />
      {things.length > 0 && shown.length === 0 ? (
        <p>No item has all of these words in its name, group or note.</p>
      ) : null}
      {isChoosing ? null : (
        <>
          <button type="button" class="primary" onClick={add}>
            {shown.length === 0 && sought.trim() ? `Add “${sought.trim()}”` : 'Add an item'}
          </button>
          <TableDoors />
        </>
      )}
    </>
  )
}

interface ListProps {
  shown: readonly Thing[]
  shownGroup: (thing: Thing) => string
  letGo: () => void
  opened: string | null
  isChoosing: boolean
  onDetail: ShelfPart['onDetail']
}

function List({ shown, shownGroup, letGo, opened, isChoosing, onDetail }: ListProps) {
  const system = useSystem()
  const mover = useMover()
  const { order, sought } = view.value
  const entries = useMemo(() => entriesOf(shown, order, shownGroup), [shown, order])
  const byId = useMemo(() => new Map(shown.map(thing => [thing.id, thing])), [shown])
  const uses = tripsUsing.value
  const there = inOpenTrip.value
  // Another order than its own, or half of the list, has no places to move a thing to.
  const isMovable = order === 'group' && sought === '' && !isChoosing
  const onOpen = useMemo(() => (id: string | null) => onDetail(id && `thing/${id}`), [])
  useEffect(() => bringIntoView(opened), [opened])
  const moveTo = (id: string, spot: Spot) => {
    letGo()
    move(byId.get(id), spot)
  }
  mover.now.moving = isMovable ? { entries, onMove: (id, spot) => moveTo(id, spot) } : null
  return (
    <LongList
      entries={entries}
      open={opened}
      mover={mover}
      draw={(at, of) => {
        const { key, heading } = entries[at]!
        if (heading !== undefined) return <GroupHeading key={key} id={key} name={heading} at={at} of={of} />
        return (
          <ThingRow
            key={key}
            thing={byId.get(key)!}
            at={at}
            of={of}
            system={system}
            uses={uses.get(key) ?? 0}
            isInTrip={there.has(key)}
            isOpen={opened === key}
            isChosen={isChoosing ? chosen.value.has(key) : null}
            mover={isMovable ? mover : null}
            onOpen={onOpen}
          />
        )
      }}
    />
  )
}

/** What is opened from elsewhere may lie far down the list. */
function bringIntoView(id: string | null) {
  const row = id === null ? null : document.getElementById(`row-${id}`)
  const top = row?.getBoundingClientRect().top ?? 0
  if (top < 0 || top > innerHeight * 0.8) row?.scrollIntoView({ block: 'start' })
}

/** A thing belongs to the group it is moved under. */
function move(thing: Thing | undefined, spot: Spot) {
  if (!thing) return
  actions.editShelf(`Move ${nameOf(thing)} on the shelf`, before => {
    const group = spot.under ?? thing.item.group ?? ''
    const after = setGroup(before, [thing.id], group, Date.now())
    const moved = after.things.find(({ id }) => id === thing.id)
    // As they are shown, so that no other group changes its place by this.
    const lie = ordered(
      after.things.map(other => (other === moved ? thing : other)),
      'group',
    )
    return moved ? { ...after, things: movedTo(lie, moved, spot) } : before
  })
}
