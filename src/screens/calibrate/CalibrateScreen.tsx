// Your own packing: what it comes to, one more to add, all there are, and the factor by hand.

import { useRef } from 'preact/hooks'
import { OwnOffer, useOwnPackings } from '../../components/confidence'
import { Field } from '../../components/fields'
import type { Plan } from '../../plan'
import { effectText, numberWord, packingsText, reckonsWith, reckonWith } from '../../report/confidence'
import { actions, openTrip, reckoned, shelf } from '../../store'
import { capital } from '../../units'
import './calibrate.css'
import { toTop } from '../../components/frame'
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
          ? 'Average packing is not yet yours. Say how full a pack was with this list, and it uses your own packing.'
          : 'Each packing you add tells more of your own hand: say how full a pack was with this list.'}
      </p>
      {open ? (
        <State plan={open.plan} factor={open.reckoned.ok ? open.reckoned.reckoning.need.factor : 1} />
      ) : null}
      {open ? <PackedForm plan={open.plan} packIds={open.packIds} taken={open.taken} /> : null}
      <Packings packings={packings} onNoneLeft={() => heading.current?.focus()} />
      <ByHand />
    </div>
  )
}

/** What this trip reckons with, and what the packings do. */
function State({ plan, factor }: { plan: Plan; factor: number }) {
  const own = useOwnPackings()
  const { personalFactor, personalFactorSpread } = plan.settings
  const withPackings = plan.packings.length > 0
  const isGeneral = !withPackings && personalFactor === 1 && personalFactorSpread === null
  const isOwn = openTrip.value !== null && reckonsWith(openTrip.value.draft, own)
  return (
    <section class="own-packing" aria-label="What this trip uses">
      {withPackings ? (
        <p>
          This trip uses {isOwn ? packingsText(plan.packings.length) : 'packings that came with it'}: it takes{' '}
          <strong>{effectText(factor)}</strong> (factor {factor.toFixed(2)}).
        </p>
      ) : (
        <p>
          {isGeneral
            ? 'This trip uses average packing.'
            : `This trip uses a factor of its own, ${personalFactor.toFixed(2)}.`}
        </p>
      )}
      <OwnOffer />
      {isGeneral ? null : (
        <button
          type="button"
          class="link"
          onClick={() => actions.edit('Use average packing', draft => reckonWith(draft, { packings: [] }))}
        >
          Use average packing for this trip instead
        </button>
      )}
      {own.packings.length > 0 ? (
        <>
          <p class="hint">
            A packing counts by how much of it was as in this list: the same items tell most, other items only
            how you pack. So each trip has a factor of its own.
          </p>
          <p class="hint">
            Other trips stay as they are and offer it under Need. A copy of a trip keeps what it uses.
          </p>
        </>
      ) : null}
      {own.older > 0 ? <p class="hint">{olderText(own.older)}</p> : null}
    </section>
  )
}

/** Kept before it was noted what was along. */
function olderText(count: number): string {
  const [which, it] =
    count === 1
      ? ['One older packing does', 'its']
      : [`${capital(numberWord(count))} older packings do`, 'their']
  return `${which} not say what was along, so no trip can be held against ${it} items. A trip that has ${it} factor keeps it. Pack that list again to count it.`
}

/** For those who know their factor from elsewhere. */
function ByHand() {
  return (
    <details class="more section">
      <summary>
        <h3>Set the factor by hand</h3>
      </summary>
      <div class="fields">
        <Field path="settings/personalFactor" />
        <Field path="settings/personalFactorSpread" />
      </div>
    </details>
  )
}
