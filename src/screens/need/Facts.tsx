// The lesser figures of the need.

import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'

interface FactsProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function Facts({ plan, reckoning, formats }: FactsProps) {
  const { need } = reckoning
  const rows: [string, string][] = [
    ['Base weight', formats.kg(need.baseKg)],
    ['Worn and in hand', formats.kg(need.wornKg)],
    ['Room in pockets', formats.litres(need.outsideLitres)],
    ['Most water carried', formats.water(need.waterCarryLitres)],
  ]
  if (need.waterCapacityLitres !== null) rows.push(['Bottles hold', formats.water(need.waterCapacityLitres)])
  if (need.waterShortLitres > 0) rows.push(['Short of water by up to', formats.water(need.waterShortLitres)])
  if (need.longestCm !== null) rows.push(['Longest rigid item inside', formats.cm(need.longestCm)])
  if (need.widestCm !== null) rows.push(['Widest rigid item inside', formats.cm(need.widestCm)])
  if (need.packedDensity !== null) rows.push(['Packed density', formats.density(need.packedDensity)])
  const share = need.peakLoadFullWaterKg / plan.carrier.massKg
  rows.push(['Heaviest load, share of body mass', formats.percent(share)])
  return (
    <div class="figures">
      <dl class="facts">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Why about={{ kind: 'facts' }} figure="How each is calculated" />
    </div>
  )
}
