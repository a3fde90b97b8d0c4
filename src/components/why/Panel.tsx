// The reasons in a sheet: one reason stands open; of several each is a line with its figure that opens.

import { useContext } from 'preact/hooks'
import sources from '../../../data/sources.json'
import {
  type About,
  type Explanation,
  explain,
  explainAlone,
  needsNoPlan,
  type Source,
  withoutPaths,
} from '../../report/why'
import { type OpenReckoned, openTrip, reckoned } from '../../store'
import { useFormats } from '../fields'

import { toHelp } from './focus-field'
import { OtherPlan } from './other-plan'
import { Reason } from './Reason'

const REGISTER: Record<string, Source> = sources

/** So many stand open at once: beyond it a list of lines is read more quickly. */
const MOST_OPEN = 3

/** `isLast`: of the panels of one sheet. */
export function Panel({ about, isLast }: { about: About; isLast: boolean }) {
  const isInHelp = useContext(OtherPlan) !== null
  const explanations = useExplanations(about)
  if (!explanations) return null
  if (explanations.length === 0)
    return <p class="hint why-none">This figure is your own, or there is none for this plan.</p>
  return (
    <div class="why-panel">
      {explanations.map((explanation, i) => (
        <Reason
          key={explanation.title}
          explanation={explanation}
          open={i === 0 && explanations.length <= MOST_OPEN}
          alone={explanations.length === 1}
          register={REGISTER}
        />
      ))}
      {isLast && !isInHelp ? (
        <button type="button" class="link" onClick={toHelp}>
          How the model works
        </button>
      ) : null}
    </div>
  )
}

/** Null while the open trip is not reckoned. */
function useExplanations(about: About): Explanation[] | null {
  const formats = useFormats()
  const other = useContext(OtherPlan)
  if (other) return explain(about, { ...other, formats }).map(withoutPaths)
  if (needsNoPlan(about)) return explainAlone(about, formats)
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const { plan } = open
  const { reckoning, working } = open.reckoned
  const stopIds = (openTrip.value?.draft.trip.stops ?? []).map(stop => stop.id)
  return explain(about, { plan, reckoning, working, formats, stopIds, packIds: idsOf(open) })
}

/** The draft's ids of the packs and set-ups that the plan has: a set-up without its mass is not among them. */
function idsOf({ packIds, plan }: OpenReckoned) {
  const packs = openTrip.value?.draft.packs ?? []
  return packIds.map((id, i) => {
    const setups = packs.find(pack => pack.id === id)?.setups ?? []
    const known = setups.filter(setup => setup.massKg !== undefined)
    const setupIds = known.map(setup => setup.id)
    return { id, setupIds: setupIds.length === plan.packs[i]?.setups.length ? setupIds : [] }
  })
}
