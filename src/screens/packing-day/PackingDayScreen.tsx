// Packing day: the list in the order in which it goes into the pack, to be ticked; what may be forgotten; the scale; and how
// full the pack is.

import { useFormats } from '../../components/fields'
import './packing-day.css'
import { useMemo } from 'preact/hooks'

import { goTo, toTop } from '../../components/frame'

import { isMeasured } from '../../report/confidence'
import { inPackingOrder } from '../../report/packing-day'
import { openTrip, reckoned, shelf } from '../../store'
import { Forgot } from './Forgot'
import { PackList } from './PackList'
import { Scale } from './Scale'

export function PackingDayScreen() {
  const formats = useFormats()
  const open = reckoned.value
  const trip = openTrip.value
  const plan = open?.plan
  const reckoning = open?.reckoned.ok ? open.reckoned.reckoning : null
  const parts = useMemo(() => (plan ? inPackingOrder(plan, reckoning) : []), [plan, reckoning])
  if (!open || !plan || !trip) return <p class="hint loading">Working it out…</p>
  return (
    <div class="screen packing-day">
      <div class="heading">
        <h2>Packing day</h2>
        <button type="button" class="quiet" aria-label="Back to trip" onClick={() => toTop('trip')}>
          Back
        </button>
      </div>
      {parts.length === 0 ? (
        <>
          <p>Nothing to pack yet.</p>
          <button type="button" onClick={() => toTop('gear')}>
            Add gear
          </button>
        </>
      ) : (
        <PackList parts={parts} plan={plan} reckoning={reckoning} formats={formats} />
      )}
      <Forgot />
      {reckoning && parts.length > 0 ? (
        <>
          <Scale open={open} reckoning={reckoning} formats={formats} />
          <section aria-labelledby="how-full">
            <h3 id="how-full">How full is it?</h3>
            <p>
              {isMeasured(trip.draft, shelf.value.packings)
                ? 'Measured: this trip uses how full its own pack was.'
                : 'Say how full the packed pack is: the litres then rest on your own packing.'}
            </p>
            <button type="button" onClick={() => goTo('calibrate')}>
              Say how full it is
            </button>
          </section>
        </>
      ) : null}
    </div>
  )
}
