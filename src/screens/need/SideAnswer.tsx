// The answer at the side of a desk, whatever place is open.

import { useSystem } from '../../components/fields'
import { Warnings } from '../../components/judged'
import { cautionsOf, formatsIn, isOfThisTrip, missingOf } from '../../report'
import { reckoned } from '../../store'
import { Answer } from './Answer'
import './need.css'

export function SideAnswer() {
  const formats = formatsIn(useSystem())
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const { plan } = open
  const { reckoning } = open.reckoned
  return (
    <div class="stack side-answer">
      <h2 class="unseen">Answer</h2>
      <Answer {...{ plan, reckoning, formats }} missing={missingOf(plan)} />
      <Warnings cautions={cautionsOf(plan, reckoning, formats).filter(isOfThisTrip)} />
    </div>
  )
}
