// The answer at the side of a desk, whatever place is open.

import { useMemo } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { useRested } from '../../components/frame'
import { Warnings } from '../../components/judged'
import { cautionsOf, formatsIn, isOfThisTrip, missingOf } from '../../report'
import { isBehind, reckoned } from '../../store'
import { Answer } from './Answer'
import './need.css'

export function SideAnswer() {
  const system = useSystem()
  const formats = formatsIn(system)
  const open = reckoned.value
  // Some warnings are of the packs, which are judged only when asked.
  const rested = useRested(open) ?? open
  const cautions = useMemo(
    () =>
      rested?.reckoned.ok
        ? cautionsOf(rested.plan, rested.reckoned.reckoning, formatsIn(system)).filter(isOfThisTrip)
        : [],
    [rested, system],
  )
  if (!open?.reckoned.ok) return null
  const { plan } = open
  const { reckoning } = open.reckoned
  return (
    <div class="stack answer-side" aria-busy={isBehind.value ? 'true' : undefined}>
      <h2 class="unseen">Answer</h2>
      <Answer {...{ plan, reckoning, formats }} missing={missingOf(plan)} />
      <Warnings cautions={cautions} />
    </div>
  )
}
