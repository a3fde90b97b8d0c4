// How many packs are suitable, and in one line what the trip asks for.

import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { type Formats, missingOf } from '../../report'
import { askedBy, askedLine, suitableSentence } from '../../report/compare-packs'
import { openTrip } from '../../store'
import type { PackList } from './pack-list'

export function Heading({ list }: { list: PackList }) {
  const { settled, isRefused } = list.judged
  const inUse = list.packs.filter(({ aside }) => aside === undefined)
  if (!settled)
    return (
      <>
        <h2 class="unseen">Packs</h2>
        {isRefused ? (
          <p class="problem">
            Not judged: the food has too little energy for its mass; change it under Food.
          </p>
        ) : null}
      </>
    )
  const { plan, reckoning } = settled
  const isEmpty = missingOf(plan).gear
  return (
    <div class="packs-heading">
      <h2 class="unseen">Packs</h2>
      <h3>
        {list.packs.length > 0 && inUse.length === 0
          ? 'All packs are set aside'
          : suitableSentence(
              inUse.map(({ id }) => list.answerOf(id)),
              { isEmpty },
            )}
      </h3>
      {isEmpty ? null : <AskedFor {...{ plan, reckoning }} formats={list.formats} />}
    </div>
  )
}

interface AskedForProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

function AskedFor({ plan, reckoning, formats }: AskedForProps) {
  const asked = askedBy([{ plan, reckoning }])
  if (!asked) return null
  const trips = [{ name: openTrip.value?.draft.name ?? '', plan }]
  return (
    <p class="asked-for" data-figures="why">
      <Why
        about={{ kind: 'asked', trips, packKg: null }}
        figure={askedLine(asked, formats)}
        title="What this trip asks for"
      />
    </p>
  )
}
