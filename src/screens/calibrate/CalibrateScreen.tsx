// Your own packing: what it comes to, one more to add, all there are, and the factor by hand.

import { useRef } from 'preact/hooks'
import { QuantityField } from '../../parts/fields'
import { OwnOffer, useOwnPacking } from '../../parts/trust'
import { defaults, LIMITS, type Plan } from '../../plan'
import { effectText, FACTOR_SPREAD, numberWord, reckonsWith, reckonWith } from '../../report/trust'
import { actions, reckoned, shelf } from '../../store'
import './calibrate.css'
import { toTop } from '../../parts/frame'
import { PackedForm } from './PackedForm'
import { Packings } from './Packings'

export function CalibrateScreen() {
  const open = reckoned.value
  const { packings } = shelf.value
  const heading = useRef<HTMLHeadingElement>(null)
  return (
    <div class="screen calibrate">
      <div class="heading">
        <h2 ref={heading} tabIndex={-1}>
          Your own packing
        </h2>
        <button type="button" class="quiet" aria-label="Back to need" onClick={() => toTop('need')}>
          Back
        </button>
      </div>
      <p>
        {packings.length === 0
          ? 'The general packing model has not seen you pack. Tell it how full a pack was with this list, and it reckons with your own hand.'
          : 'Each packing you add tells more of your own hand: say how full a pack was with this list.'}
      </p>
      {open ? <State plan={open.plan} /> : null}
      {open ? <PackedForm plan={open.plan} packIds={open.packIds} /> : null}
      <Packings packings={packings} onNoneLeft={() => heading.current?.focus()} />
      <ByHand />
    </div>
  )
}

/** What the packings come to, and whether this trip reckons with them. */
function State({ plan }: { plan: Plan }) {
  const own = useOwnPacking()
  const { personalFactor, personalFactorSpread } = plan.settings
  const isOwn = own !== null && reckonsWith(plan.settings, own)
  const isGeneral = personalFactor === 1 && personalFactorSpread === null
  return (
    <section class="own-packing" aria-label="What your packings come to">
      {own ? (
        <p>
          {packingsText(own.count)}: what you pack takes <strong>{effectText(own.factor)}</strong> (factor{' '}
          {own.factor.toFixed(2)}), give or take {shareText(own.spread)}.
        </p>
      ) : null}
      <p>
        {isOwn
          ? 'This trip reckons with it.'
          : isGeneral
            ? 'This trip reckons with the general packing model.'
            : `This trip reckons with a factor of its own, ${personalFactor.toFixed(2)}.`}
      </p>
      <OwnOffer plan={plan} />
      {isGeneral ? null : (
        <button
          type="button"
          class="link"
          onClick={() =>
            actions.edit('Reckon with the general packing model', draft => reckonWith(draft, null))
          }
        >
          Reckon this trip with the general model instead
        </button>
      )}
      {own ? (
        <>
          <p class="hint">
            One packing is good to {shareText(FACTOR_SPREAD.ofOne)}, several that agree to{' '}
            {shareText(FACTOR_SPREAD.least)} at the best. The general model’s range can read narrower than
            that, because it leaves out how one hand differs from another. What this list’s litres are off by
            goes into the factor too: it is surest for lists like those you packed.
          </p>
          <p class="hint">
            Other trips stay as they are and offer it under Need. A copy of a trip keeps what it reckons with.
          </p>
        </>
      ) : null}
    </section>
  )
}

const shareText = (share: number) => `${Math.round(share * 100)}\u00a0%`

const packingsText = (count: number) => {
  const word = numberWord(count)
  return `${word[0]!.toUpperCase()}${word.slice(1)} ${count === 1 ? 'packing' : 'packings'}`
}

/** For those who know their factor from elsewhere. */
function ByHand() {
  const { settings } = LIMITS
  return (
    <details class="more section">
      <summary>
        <h3>Set the factor by hand</h3>
      </summary>
      <div class="fields">
        <QuantityField
          path="settings/personalFactor"
          label="Your packing, times the model’s"
          kind="number"
          limit={settings.personalFactor}
          usual={defaults.SETTINGS.personalFactor}
        />
        <QuantityField
          path="settings/personalFactorSpread"
          label="Give or take"
          kind="share"
          limit={settings.personalFactorSpread}
          hint="One standard deviation. Empty: the model’s own range stands."
        />
      </div>
    </details>
  )
}
