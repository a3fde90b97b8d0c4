// The open trip as a link or a code, after saying what is in it.

import { useFormats } from '../../components/fields'
import './share.css'
import { useMemo, useState } from 'preact/hooks'

import { shareLink, withoutCarrier } from '../../files/share'
import { completePlan, type PlanDocument } from '../../plan'
import type { Formats } from '../../report'
import { reckoned } from '../../store'
import { type PlanWithPacks, usePlanWithPacks } from './PacksAlong'
import { useLinkOf, Ways } from './Ways'

export function SharePlan() {
  const plan = usePlanWithPacks()
  return plan ? <Share {...plan} /> : null
}

function Share({ document, choice, chosen }: PlanWithPacks) {
  const [leaveOut, setLeaveOut] = useState(true)
  const whole = reckoned.value?.document
  const shared = useMemo(() => (leaveOut ? withoutCarrier(document) : document), [whole, chosen, leaveOut])
  const made = useLinkOf(shared, shareLink)
  const formats = useFormats()
  return (
    <section>
      <h2>Share this trip</h2>
      <p>
        A link carries the whole plan in itself: stops, gear, packs, settings and all names. No server gets to
        see it; whoever has the link can read it.
      </p>
      <label class="toggle">
        <input
          type="checkbox"
          checked={leaveOut}
          onChange={event => setLeaveOut(event.currentTarget.checked)}
        />
        <span>Leave out body mass, height, age and sex</span>
      </label>
      {choice}
      <p class="hint" data-figures="typed">
        {personWords(shared, leaveOut, formats)}
      </p>
      {made?.ok === false ? <p class="problem">{made.message}</p> : null}
      {made?.ok === false ? null : (
        <Ways key={made?.link} link={made?.link ?? null} name={document.name ?? ''} />
      )}
    </section>
  )
}

/** What the link tells of the person. */
function personWords(document: PlanDocument, leftOut: boolean, { kg, cm, percent }: Formats): string {
  const { massKg, heightCm, ageYears, sex, loadShareLimit } = completePlan(document).carrier
  const limit = `to carry at most ${percent(loadShareLimit)} of body mass`
  if (leftOut)
    return `The link says ${kg(massKg)}, a stand-in, and that you want ${limit}. What depends on you, such as energy, will read differently there.`
  const told = [
    kg(massKg),
    heightCm === null ? '' : cm(heightCm),
    ageYears === null ? '' : `${ageYears} years`,
    sex ?? '',
  ].filter(Boolean)
  return `The link tells of you: ${told.join(', ')}, and that you want ${limit}.`
}
