// What has changed on the shelf since this trip packed from it: offered in a quiet line, taken or turned down by hand.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import type { Draft } from '../../plan'
import { keepAsIs, type Offer, offersFor, takeOffer } from '../../plan/shelf'
import { actions, openTrip, shelf } from '../../store'
import { counted, type System } from '../../units'
import { factText, factWord, saidFields } from './fact-words'
import './gear.css'

const SHOWN = 20

export function ShelfOffers() {
  const system = useSystem()
  const [open, setOpen] = useState(false)
  const [answered, setAnswered] = useState('')
  const trip = openTrip.value
  const offers = useMemo(
    () =>
      trip
        ? offersFor(trip.draft, shelf.value).filter(({ fields }) => saidFields(fields, system).length > 0)
        : [],
    [trip?.draft.gear, shelf.value, system],
  )
  // The button that was tapped is gone: the focus goes to what says what came of it.
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (answered) said.current?.focus()
  }, [answered])
  if (!trip) return null

  const answer = (label: string, given: readonly Offer[], act: typeof takeOffer) => {
    actions.edit(label, draft => given.reduce((made: Draft, offer) => act(made, offer, Date.now()), draft))
    setAnswered(`${label}.`)
  }
  const one = (offer: Offer) => offer.thing.item.name || 'an item without a name'
  const all = counted(offers.length, 'item')
  return (
    <>
      {offers.length > 0 ? (
        <details class="offers" open={open} onToggle={event => setOpen(event.currentTarget.open)}>
          <summary>{all} changed on the shelf</summary>
          {open ? (
            <>
              <ul>
                {offers.slice(0, SHOWN).map(offer => (
                  <li key={offer.itemId}>
                    <Changes offer={offer} system={system} />
                    <div class="actions">
                      <button
                        type="button"
                        aria-label={`Take over ${one(offer)}`}
                        onClick={() => answer(`Took over ${one(offer)}`, [offer], takeOffer)}
                      >
                        Take over
                      </button>
                      <button
                        type="button"
                        class="quiet"
                        aria-label={`Keep as it is: ${one(offer)}`}
                        onClick={() => answer(`Kept ${one(offer)} as it is`, [offer], keepAsIs)}
                      >
                        Keep as it is
                      </button>
                    </div>
                  </li>
                ))}
              </ul>
              {offers.length > SHOWN ? <p class="hint">And {offers.length - SHOWN} more.</p> : null}
              {offers.length > 1 ? (
                <div class="actions">
                  <button type="button" onClick={() => answer(`Took over ${all}`, offers, takeOffer)}>
                    Take over all {offers.length}
                  </button>
                  <button
                    type="button"
                    class="quiet"
                    onClick={() => answer(`Kept ${all} as they are`, offers, keepAsIs)}
                  >
                    Keep all as they are
                  </button>
                </div>
              ) : null}
              <p class="hint">Other trips stay as they are until you open them.</p>
            </>
          ) : null}
        </details>
      ) : null}
      <p ref={said} tabIndex={-1} class={answered ? '' : 'unseen'} role="status">
        {answered}
      </p>
    </>
  )
}

function Changes({ offer, system }: { offer: Offer; system: System }) {
  return (
    <>
      <bdi class="name">{offer.thing.item.name || 'Without a name'}</bdi>
      <ul class="changes" data-figures="typed">
        {saidFields(offer.fields, system).map(({ field, from, to }) => (
          <li key={field}>
            {factWord(field)}: from {factText(field, from, system)} to{' '}
            <strong>{factText(field, to, system)}</strong>
          </li>
        ))}
      </ul>
    </>
  )
}
