// One stretch between sources, in words: how far, how much water, and each dry camp's price.

import type { Plan } from '../../plan'
import type { DryCamp, DryStretch } from '../../reckon'
import { marginText, type Shown } from '../../report'

interface Props {
  stretch: DryStretch
  plan: Plan
  shown: Shown
  /** Litres; null: nothing holds water. */
  capacity: number | null
}

export function Stretch({ stretch, plan, shown, capacity }: Props) {
  const { carry, km, hours, camps, unreckoned } = stretch
  const { stops } = plan.trip
  const name = (stop: number) => <bdi class="name">{stops[stop]!.name}</bdi>
  return (
    <li class="stretch">
      <p>
        {name(carry.stop)} to {name(carry.to)}
      </p>
      <p class="facts-line">
        {shown.km(km)}, {shown.hours(hours)} of walking
        {nightsText(stops.slice(carry.stop + 1, carry.to).reduce((sum, stop) => sum + stop.nights, 0))}
      </p>
      <p>
        <strong>{shown.water(carry.needLitres)}</strong> to carry out
        {carry.shortLitres > 0 && capacity !== null ? (
          <>
            : <strong class="problem">falls short by {marginText(carry.shortLitres, shown.water)}</strong>
          </>
        ) : (
          '.'
        )}
      </p>
      {camps.length > 0 ? (
        <ul class="reasons">
          {camps.map(camp => (
            <li key={camp.stop}>
              A camp at water at {name(camp.stop)} {savedText(camp, carry.shortLitres > 0, shown)}
            </li>
          ))}
        </ul>
      ) : null}
      {unreckoned.length > 0 ? (
        <p class="hint">
          Not reckoned for {unreckoned.length} more {unreckoned.length === 1 ? 'dry camp' : 'dry camps'} here.
        </p>
      ) : null}
    </li>
  )
}

const nightsText = (nights: number): string =>
  nights === 0 ? '' : nights === 1 ? ', 1 dry night' : `, ${nights} dry nights`

/** "would save 2.5 L out of the source and 2.1 kg of the heaviest load, and end the shortfall." */
function savedText(camp: DryCamp, isShort: boolean, shown: Shown): string {
  const { savesCarryLitres, savesPeakKg, leavesShortLitres } = camp
  const litres = `would save ${shown.water(Math.max(0, savesCarryLitres))} of what must be carried out`
  const short = !isShort
    ? ''
    : leavesShortLitres > 0
      ? `; it would still fall short by ${marginText(leavesShortLitres, shown.water)}`
      : ', and nothing would fall short here'
  return `${litres}${peakText(savesPeakKg, shown)}${short}.`
}

function peakText(savesPeakKg: number, { kg }: Shown): string {
  const text = kg(Math.abs(savesPeakKg))
  if (text === kg(0)) return '; the heaviest load would stay as it is'
  if (savesPeakKg < 0) return `; the heaviest load would be ${text} more, with bottles filled there`
  return ` and ${text} of the heaviest load`
}
