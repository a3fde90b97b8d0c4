// One page of paper: the answer, the pictures, the days, the packs, what to pack where, and what to beware of.

import { type Item, itemName, type LeftOut, tripName } from '../../plan'
import {
  leastText,
  type Missing,
  missingOf,
  notInItText,
  placeText,
  safeLoadKg,
  takesNothing,
} from '../../report'
import { basisOf, enoughText, likelyText } from '../../report/confidence'
import { counted } from '../../units'
import type { SheetParts } from './parts'
import { SheetDays } from './SheetDays'
import { SheetPacking } from './SheetPacking'
import { SheetPacks } from './SheetPacks'
import { SheetPictures } from './SheetPictures'
import { SheetCautions, SheetWater } from './SheetWater'

export interface SheetProps extends SheetParts {
  leftOut: LeftOut[]
  /** What is on the list and not taken. */
  atHome: readonly Item[]
  /** Whose sheet it is, of several people; else empty. */
  whose: string
  /** The day of printing, in words. */
  printed: string
}

const UNITS = {
  metric:
    'Masses in kilograms or grams, room and water in litres, ways in kilometres, climbs in metres, heat in °C.',
  us: 'Masses in pounds or ounces, room in litres, water in quarts, ways in miles, climbs in feet, heat in °F.',
} as const

export function Sheet({ leftOut, atHome, whose, printed, ...parts }: SheetProps) {
  const { plan, formats } = parts
  const missing = missingOf(plan)
  return (
    <article class="sheet" aria-label="What will be printed">
      <header class="sheet-head">
        <div>
          <h2>
            <bdi>{tripName(plan)}</bdi>
            {whose ? (
              <>
                : <bdi>{whose}</bdi>
              </>
            ) : null}
          </h2>
          <p>
            <Route {...parts} />
          </p>
        </div>
        <p class="small">
          {UNITS[formats.system]} Printed {printed}.
        </p>
      </header>
      <Answer {...parts} missing={missing} />
      {leftOut.length ? <p class="small not-counted">{leftOutText(leftOut)}</p> : null}
      <SheetPictures {...parts} atLeast={missing.litres.length > 0} />
      <div class="sheet-columns">
        <div>
          <SheetDays {...parts} />
          <SheetWater {...parts} />
        </div>
        <SheetPacks {...parts} />
      </div>
      <SheetPacking {...parts} />
      {atHome.length > 0 ? <p class="small">Left at home: {atHome.map(itemName).join(', ')}.</p> : null}
      <SheetCautions {...parts} />
    </article>
  )
}

function Route({ plan: { trip }, reckoning, formats }: SheetParts) {
  const km = trip.stops.reduce((sum, { leg }) => sum + (leg?.km ?? 0), 0)
  const ascentM = trip.stops.reduce((sum, { leg }) => sum + (leg?.ascentM ?? 0), 0)
  const days = reckoning.days.length
  return (
    <>
      <bdi>{trip.stops[0]!.name}</bdi> to <bdi>{trip.stops.at(-1)!.name}</bdi>: {counted(days, 'day')},{' '}
      {formats.km(km)}, {formats.metres(ascentM)} of climbing.
    </>
  )
}

function Answer({ plan, reckoning, formats, missing }: SheetParts & { missing: Missing }) {
  const { need, moments } = reckoning
  const basis = basisOf({ plan, reckoning, formats })
  const noLitres = notInItText(missing, 'litres')
  const noMass = notInItText(missing, 'mass')
  if (takesNothing(plan))
    return (
      <section class="sheet-answer" aria-label="Need">
        <p>No gear yet: nothing can be told.</p>
      </section>
    )
  const more: [string, string][] = [
    ['Base weight', formats.kg(need.baseKg)],
    ['Worn and in hand', formats.kg(need.wornKg)],
    ['Room in pockets', formats.litres(need.outsideLitres)],
    ['Most water carried', formats.water(need.waterCarryLitres)],
  ]
  return (
    <section class="sheet-answer" aria-label="Need">
      <div>
        <h3>Main body</h3>
        <p class="figure">
          {noLitres ? 'At least ' : ''}
          {formats.litresUp(need.bodyLitres)}
        </p>
        <p class="small">
          {noLitres || `Likely ${likelyText(need, formats)}`}; fullest {placeText(need.bodyAt, moments)}.{' '}
          {noLitres ? '' : `${enoughText(need, formats)}. `}
          {basis.litres}
        </p>
      </div>
      <div>
        <h3>Heaviest load</h3>
        <p class="figure">
          {noMass ? 'At least ' : ''}
          {formats.kg(need.peakLoadFullWaterKg)}
        </p>
        <p class="small">
          Without the pack, {placeText(need.peakFullWaterAt, moments)};{' '}
          {need.waterShortLitres > 0
            ? `with all the water wanted, ${leastText(missing, 'mass', formats.kg(need.peakLoadKg))} with what your bottles hold; `
            : ''}
          {noMass || `at most ${formats.kg(safeLoadKg(need))} in about 9 of 10 cases`}. {basis.load}
        </p>
      </div>
      <dl class="small">
        {more.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/** Paper cannot lead to the place to mend it, but it must not hide that a stand-in was used. */
function leftOutText(leftOut: LeftOut[]): string {
  const told = leftOut.slice(0, 5).map(({ message }) => message)
  const more = leftOut.length - told.length
  return `Not counted yet: ${told.join(' ')}${more > 0 ? ` And ${more} more.` : ''}`
}
