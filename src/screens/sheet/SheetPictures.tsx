// The two pictures side by side, at the moment when the main body is fullest.

import { useMemo } from 'preact/hooks'
import { Cutaway, LoadLine, placeWords } from '../../parts/pictures'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { SheetParts } from './Sheet'

const standStill = () => undefined

export function SheetPictures({ plan, reckoning, shown }: SheetParts) {
  const { moments, need } = reckoning
  const limits = useMemo(() => limitsOf(plan, reckoning), [plan, reckoning])
  const fullest = Math.max(
    0,
    moments.findIndex(m => m.stop === need.bodyAt.stop && m.phase === need.bodyAt.phase),
  )
  const moment = moments[fullest]
  if (!moment) return null
  const pack = packToShow(plan, reckoning)
  return (
    <div class="sheet-pictures">
      <LoadLine
        moments={moments}
        stops={plan.trip.stops}
        limits={limits}
        moment={fullest}
        onMoment={standStill}
        format={shown}
      />
      <Cutaway
        name={pack?.name ?? 'The pack you need'}
        at={placeWords(moment, plan.trip.stops)}
        bodyLitres={pack?.bodyLitres ?? null}
        collarLitres={pack?.collarLitres ?? 0}
        innerHeightCm={pack?.innerHeightCm ?? null}
        need={need}
        moment={moment}
        scaleLitres={Math.max(need.bodyLitresSafe, pack ? pack.bodyLitres + pack.collarLitres : 0)}
        format={shown}
      />
    </div>
  )
}

/** The first pack that will do, or the first there is. */
function packToShow({ packs }: Plan, reckoning: Reckoning) {
  const does = reckoning.packs.find(setup => setup.suffices)
  return packs[does?.pack ?? 0]
}

/** What the contents may weigh in each set-up; the line has room for three. */
function limitsOf(plan: Plan, { packs, need }: Reckoning) {
  return packs
    .flatMap(({ loadLimitKg, ratedAgainstKg, name, setup, pack }) => {
      if (loadLimitKg === null) return []
      // The line shows contents, so what the pack itself takes of its rating comes off the limit.
      const kg = loadLimitKg - (ratedAgainstKg - need.peakLoadKg)
      return kg > 0 ? [{ label: plan.packs[pack]!.setups.length > 1 ? `${name}, ${setup}` : name, kg }] : []
    })
    .slice(0, 3)
}
