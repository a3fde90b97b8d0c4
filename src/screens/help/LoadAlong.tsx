// Gear, food, fuel and water over the trip: the load at each moment, its peak, and what the pack must offer.

import { useMemo, useState } from 'preact/hooks'
import { Cutaway, LoadLine, placeWords } from '../../components/graphics'
import { Why } from '../../components/why'
import { contentsLimits, momentIndex, placeText } from '../../report'
import { askedBy } from '../../report/compare-packs'
import type { ContentsProps } from './contents-props'

export function LoadAlong({ example, formats }: ContentsProps) {
  const { plan, reckoning } = example
  const { moments, need } = reckoning
  const [moment, setMoment] = useState(momentIndex(moments, need.bodyAt))
  const limits = useMemo(() => contentsLimits(plan, reckoning), [plan, reckoning])
  const pack = plan.packs[0]!
  const at = placeWords(moments[moment]!, plan.trip.stops)
  return (
    <>
      <LoadLine
        moments={moments}
        stops={plan.trip.stops}
        limits={limits}
        moment={moment}
        onMoment={setMoment}
        format={formats}
      />
      <div class="help-beside">
        <div class="stack">
          <p>
            Gear, here{' '}
            <Why about={{ kind: 'base-weight' }} figure={formats.kg(need.baseKg)} title="Base weight" />,
            stays; food and fuel get less; water is filled and drunk.
          </p>
          <p>
            The peak is the heaviest load:{' '}
            <Why
              about={{ kind: 'peak-load' }}
              figure={formats.kg(need.peakLoadFullWaterKg)}
              title="Heaviest load"
            />{' '}
            {placeText(need.peakFullWaterAt, moments)}. The room is what lies inside when fullest:{' '}
            <Why
              about={{ kind: 'body-litres' }}
              figure={formats.litresUp(need.bodyLitres)}
              title="Main body"
            />
          </p>
          <Asked {...{ example, formats }} />
        </div>
        <Cutaway
          name={pack.name}
          at={at}
          bodyLitres={pack.bodyLitres}
          collarLitres={pack.collarLitres}
          innerHeightCm={pack.innerHeightCm}
          need={need}
          moment={moments[moment]!}
          scaleLitres={pack.bodyLitres + pack.collarLitres}
          format={formats}
          isBare
        />
      </div>
    </>
  )
}

/** What the pack must offer for this trip. */
function Asked({ example: { plan, reckoning }, formats }: ContentsProps) {
  const asked = askedBy([{ plan, reckoning }])
  if (!asked) return null
  const { frame, ratedKg } = asked.wanted
  const trips = [{ name: plan.name, plan }]
  return (
    <p>
      So the pack must offer that room{frame ? ', a frame' : ''} and, with its own mass, a rated load of{' '}
      <Why about={{ kind: 'asked', trips, packKg: null }} figure={formats.kg(ratedKg)} title="Rated load" />
    </p>
  )
}
