// One stretch between sources, in words: how far, how much water, and each dry camp's price.

import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { DryCamp, DryStretch } from '../../reckon'
import { type Formats, marginText } from '../../report'
import { counted } from '../../units'

interface Props {
  stretch: DryStretch
  plan: Plan
  formats: Formats
}

export function Stretch({ stretch, plan, formats }: Props) {
  const { carry, km, hours, camps, unreckoned } = stretch
  const { stops } = plan.trip
  const name = (stop: number) => <bdi class="name">{stops[stop]!.name}</bdi>
  return (
    <li class="stretch" data-figures="why">
      <p>
        {name(carry.stop)} to {name(carry.to)}
      </p>
      <p class="facts-line">
        {formats.km(km)}, {formats.hours(hours)} of walking
        {nightsText(stops.slice(carry.stop + 1, carry.to).reduce((sum, stop) => sum + stop.nights, 0))}
      </p>
      <p>
        <strong>{formats.water(carry.needLitres)}</strong> to carry out
        {carry.shortLitres > 0 ? (
          <>
            : <strong class="problem">falls short by {marginText(carry.shortLitres, formats.water)}</strong>
          </>
        ) : (
          '.'
        )}
      </p>
      {camps.length > 0 ? (
        <ul class="reasons">
          {camps.map(camp => (
            <li key={camp.stop}>
              With water at {name(camp.stop)}: {savedText(camp, carry.shortLitres > 0, formats)}
            </li>
          ))}
        </ul>
      ) : null}
      {unreckoned.length > 0 ? (
        <p class="hint">Not calculated for {counted(unreckoned.length, 'more dry camp')} here.</p>
      ) : null}
      <Why about={{ kind: 'carry', stop: carry.stop, camps }} figure="What the water is for" />
    </li>
  )
}

const nightsText = (nights: number): string => (nights === 0 ? '' : `, ${counted(nights, 'dry night')}`)

/** "3.5 L less to carry out, 0.6 kg less at the heaviest, still short by 2.2 L." */
function savedText(camp: DryCamp, isShort: boolean, { water, kg }: Formats): string {
  const { savesCarryLitres, savesPeakKg, leavesShortLitres } = camp
  const load = kg(Math.abs(savesPeakKg))
  const words = [`${water(Math.max(0, savesCarryLitres))} less to carry out`]
  if (load === kg(0)) words.push('the heaviest load stays')
  else if (savesPeakKg > 0) words.push(`${load} off the heaviest load`)
  else words.push(`adds ${load} to the heaviest load, as bottles are filled there`)
  if (leavesShortLitres > 0) words.push(`still short by ${marginText(leavesShortLitres, water)}`)
  else if (isShort) words.push('no longer short')
  return `${words.join(', ')}.`
}
