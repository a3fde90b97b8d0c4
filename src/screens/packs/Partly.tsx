// A set-up that lacks its mass or its litres, judged as far as it is known.

import { PartlyJudged } from '../../components/judged'
import type { DraftPack, DraftSetup, Plan } from '../../plan'
import type { Formats } from '../../report'
import { partlyJudged } from '../../report/compare-packs'

/** The set-ups of a pack that the plan had to leave out. */
export function partlyKnown(pack: DraftPack): DraftSetup[] {
  return pack.bodyLitres === undefined ? pack.setups : pack.setups.filter(setup => setup.massKg === undefined)
}

interface PartlyKnownProps {
  pack: DraftPack
  setup: DraftSetup
  plan: Plan
  formats: Formats
}

export function PartlyKnown({ pack, setup, plan, formats }: PartlyKnownProps) {
  const { id: _pack, setups, ...figures } = pack
  const { id: _setup, ...own } = setup
  const known = { ...figures, setup: own }
  const judged = partlyJudged(plan, known, formats)
  if (!judged) return null
  return (
    <PartlyJudged {...{ judged, plan, known }} name={setups.length > 1 ? (setup.name ?? 'Set-up') : null} />
  )
}
