// The two pictures side by side, at the moment when the main body is fullest.

import { useMemo } from 'preact/hooks'
import { Cutaway, LoadLine, placeWords } from '../../components/graphics'
import type { Reckoning } from '../../reckon'
import { contentsLimits, isYes, momentIndex } from '../../report'
import type { SheetParts } from './parts'

const standStill = () => undefined

export function SheetPictures({
  plan,
  reckoning,
  formats,
  taken,
  atLeast,
}: SheetParts & { atLeast: boolean }) {
  const { moments, need } = reckoning
  const shown = taken ?? firstThatDoes(reckoning)
  const limits = useMemo(() => contentsLimits(plan, reckoning, shown), [plan, reckoning, shown])
  const fullest = momentIndex(moments, need.bodyAt)
  const moment = moments[fullest]
  if (!moment) return null
  const pack = plan.packs[shown]
  return (
    <div class="sheet-pictures">
      <LoadLine
        moments={moments}
        stops={plan.trip.stops}
        limits={limits}
        moment={fullest}
        onMoment={standStill}
        format={formats}
      />
      <Cutaway
        name={pack?.name ?? 'The pack you need'}
        at={placeWords(moment, plan.trip.stops)}
        bodyLitres={pack?.bodyLitres ?? null}
        collarLitres={pack?.collarLitres ?? 0}
        innerHeightCm={pack?.innerHeightCm ?? null}
        need={need}
        atLeast={atLeast}
        moment={moment}
        scaleLitres={Math.max(need.bodyLitresSafe, pack ? pack.bodyLitres + pack.collarLitres : 0)}
        format={formats}
      />
    </div>
  )
}

/** The place of the first pack that will do, or of the first there is. */
const firstThatDoes = ({ packs }: Reckoning): number => packs.find(({ answer }) => isYes(answer))?.pack ?? 0
