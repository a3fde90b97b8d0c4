// The open trip as a link or a code, after saying what is in it.

import { SelectOne, useFormats } from '../../components/fields'
import './share.css'
import { useMemo, useState } from 'preact/hooks'

import { asSharedOut, shareLink, withoutBodies, withoutNames } from '../../files/share'
import { completeAny, documentOfPerson, isParty, personName, type WrittenPlan } from '../../plan'
import type { Formats } from '../../report'
import { openTrip, reckoned } from '../../store'
import { type PlanWithPacks, usePlanWithPacks } from './PacksAlong'
import { useLinkOf, Ways } from './Ways'

export function SharePlan() {
  const plan = usePlanWithPacks()
  return plan ? <Share {...plan} /> : null
}

/** Stands for all of several people. */
const ALL = ''

function Share({ document, choice, chosen }: PlanWithPacks) {
  const [leaveOut, setLeaveOut] = useState(true)
  const [noNames, setNoNames] = useState(true)
  const [whose, setWhose] = useState(ALL)
  const whole = reckoned.value?.document
  const carriers = reckoned.value?.party?.carriers
  const people = document.people ?? []
  const who = people.findIndex(({ id }) => id === whose)
  const shared = useMemo(() => {
    const all = carriers ? asSharedOut(document, carriers) : document
    const one = carriers && who >= 0 ? documentOfPerson(all, carriers, who) : all
    const named = noNames ? withoutNames(one) : one
    return leaveOut ? withoutBodies(named) : named
  }, [whole, carriers, chosen, leaveOut, noNames, who])
  const made = useLinkOf(shared, shareLink)
  const formats = useFormats()
  return (
    <section>
      <h2>Share this trip</h2>
      <p>
        A link carries the whole plan in itself: stops, gear, packs, settings and all names. No server gets to
        see it; whoever has the link can read it.
      </p>
      {people.length > 1 ? (
        <SelectOne
          label="For"
          options={[
            { value: ALL, label: 'All, with who carries what' },
            ...people.map(({ id }) => ({
              value: id,
              label: `${personName({ people }, id)}, what they carry`,
            })),
          ]}
          chosen={whose}
          onChoose={setWhose}
        />
      ) : null}
      <Toggle label="Leave out body mass, height, age and sex" isOn={leaveOut} onChange={setLeaveOut} />
      {people.length > 0 && who < 0 ? (
        <Toggle label="Leave out the names of people" isOn={noNames} onChange={setNoNames} />
      ) : null}
      {choice}
      <p class="hint" data-figures="typed">
        {personWords(shared, leaveOut, formats)}
      </p>
      {made?.ok === false ? <p class="problem">{made.message}</p> : null}
      {made?.ok === false ? null : (
        <Ways key={made?.link} link={made?.link ?? null} name={openTrip.value?.draft.name ?? ''} />
      )}
    </section>
  )
}

function Toggle({
  label,
  isOn,
  onChange,
}: {
  label: string
  isOn: boolean
  onChange: (isOn: boolean) => void
}) {
  return (
    <label class="toggle">
      <input type="checkbox" checked={isOn} onChange={event => onChange(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  )
}

/** What the link tells of the person, or of all. */
function personWords(document: WrittenPlan, leftOut: boolean, { kg, cm, percent }: Formats): string {
  const plan = completeAny(document)
  if (isParty(plan))
    return leftOut
      ? 'The link says how much of body mass each wants to carry, and a stand-in for the body mass. What depends on it, such as a fair share, will read differently there.'
      : 'The link tells of each: body mass, and height, age and sex where they are given.'
  const { massKg, heightCm, ageYears, sex, loadShareLimit } = plan.carrier
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
