// What a pack is for this trip: the verdicts; of set-ups that lack their mass or litres, as much as can be said.

import { useMemo } from 'preact/hooks'
import { PartlyJudged } from '../../components/judged'
import type { DraftPack, DraftSetup, Plan } from '../../plan'
import type { Formats } from '../../report'
import { knownPack, partlyJudged, partlyKnown, standingOut } from '../../report/compare-packs'
import type { Judged } from './judged'
import { Verdicts } from './Verdicts'

interface PackVerdictsProps {
  pack: DraftPack
  judged: Judged
  formats: Formats
}

export function PackVerdicts({ pack, judged, formats }: PackVerdictsProps) {
  const { settled, isRefused } = judged
  const standsOut = useMemo(() => (settled ? standingOut(settled.plan, settled.reckoning) : []), [settled])
  if (isRefused)
    return (
      <p class="hint verdict">
        Not judged: the food has too little energy for its mass; change it under Food.
      </p>
    )
  if (!settled) return null
  const { plan, packIds, reckoning } = settled
  const packIndex = packIds.indexOf(pack.id)
  return (
    <>
      {packIndex < 0 ? null : (
        <Verdicts {...{ packIndex, plan, reckoning, formats }} notBeaten={at => standsOut[at]!} />
      )}
      {partlyKnown(pack).map(setup => (
        <PartlyKnown key={setup.id} {...{ pack, setup, plan, formats }} />
      ))}
    </>
  )
}

interface PartlyKnownProps {
  pack: DraftPack
  setup: DraftSetup
  plan: Plan
  formats: Formats
}

function PartlyKnown({ pack, setup, plan, formats }: PartlyKnownProps) {
  const known = knownPack(pack, setup)
  const judged = partlyJudged(plan, known, formats)
  if (!judged) return null
  const name = pack.setups.length > 1 ? (setup.name ?? 'Set-up') : null
  return <PartlyJudged {...{ judged, plan, known, name }} />
}
