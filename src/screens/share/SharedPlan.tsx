// A plan or packs that came in a link: what it is, before anything of it is kept. It never touches a trip that is here.

import { useFormats } from '../../components/fields'
import './share.css'
import { useEffect, useRef, useState } from 'preact/hooks'

import type { ReadPacks } from '../../files/pack-list'
import { type ReadLink, readLink, readPacksLink } from '../../files/share'
import { completeAny, fromPlanDocument, isParty, tripName, type WrittenPlan } from '../../plan'

import { actions, newId } from '../../store'
import { counted } from '../../units'
import { PacksOffer } from './PacksOffer'

interface SharedPlanProps {
  /** The fragment of the address. */
  link: string
  /** Called when the plan was kept or left. */
  onDone: () => void
}

export function SharedPlan({ link, onDone }: SharedPlanProps) {
  const [read, setRead] = useState<ReadLink | ReadPacks | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    void (link.startsWith('#packs=') ? readPacksLink(link, newId) : readLink(link)).then(setRead)
  }, [link])
  useEffect(() => {
    if (read) heading.current?.focus()
  }, [read])
  if (!read) return <p class="hint loading">Opening…</p>
  return (
    <div class="screen shared-plan">
      <h1 ref={heading} tabIndex={-1}>
        {!read.ok ? 'This link cannot be opened' : 'packs' in read ? 'Someone’s packs' : 'Someone’s plan'}
      </h1>
      {read.ok && 'packs' in read ? (
        <PacksOffer packs={read.packs} leftOut={read.leftOut} onDone={onDone} />
      ) : read.ok ? (
        <PlanOffer document={read.document} onDone={onDone} />
      ) : (
        <>
          <p class="problem">{read.message}</p>
          <p class="hint">Nothing here has changed.</p>
          <div class="actions">
            <button type="button" class="primary" onClick={onDone}>
              Go on without it
            </button>
          </div>
        </>
      )}
    </div>
  )
}

/** What a plan is, and keeping it or not. */
export function PlanOffer({ document, onDone }: { document: WrittenPlan; onDone: () => void }) {
  const { kg, percent } = useFormats()
  const { name, trip, gear = [], packs = [] } = document
  const plan = completeAny(document)
  const keep = () => {
    actions.createTrip(fromPlanDocument(document, newId))
    actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
    onDone()
  }
  return (
    <>
      <p class="lead">
        <bdi>{tripName({ name })}</bdi>: {counted(trip.stops.length, 'stop')}, {counted(gear.length, 'item')},{' '}
        {counted(packs.length, 'pack')}.
      </p>
      <p>
        {isParty(plan)
          ? `It is of ${counted(plan.people.length, 'person', 'people')} who share out what they carry. Who they are stands under Trip.`
          : `It is calculated for somebody of ${kg(plan.carrier.massKg)} who wants to carry at most ${percent(plan.carrier.loadShareLimit)} of body mass. If that is not you, change it under Trip.`}
      </p>
      <div class="actions">
        <button type="button" class="primary" onClick={keep}>
          Keep it as a trip
        </button>
        <button type="button" class="quiet" onClick={onDone}>
          Leave it
        </button>
      </div>
      <p class="hint">
        It becomes a trip of its own; none of yours changes. Until you keep it, nothing of it is stored.
      </p>
    </>
  )
}
