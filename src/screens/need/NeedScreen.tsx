// Need: the answer and its warnings first, then the pictures behind it, the days, and what else to beware of.

import { useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../parts/fields'
import { Cutaway, LoadLine, placeWords } from '../../parts/pictures'
import { Cautions, LeftOut } from '../../parts/pieces'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { cautionsOf, contentsLimits, GENERAL_LINE, momentIndex, type Shown, shownIn } from '../../report'
import { reckoned } from '../../store'
import { Answer } from './Answer'
import { Days } from './Days'
import { DryStretches } from './DryStretches'
import { ProfileNote, useProfile } from './Profile'

export function NeedScreen({ onGo }: { onGo: (path: string) => void }) {
  const shown = shownIn(useSystem())
  if (!reckoned.value) return null
  const { plan, leftOut, reckoned: result } = reckoned.value
  if (!result.ok)
    return (
      <div class="screen">
        <h2>Need</h2>
        <p class="problem">{result.problem.message}</p>
      </div>
    )
  const { reckoning } = result
  const cautions = cautionsOf(plan, reckoning, shown)
  return (
    <div class="screen">
      <h2>Need</h2>
      <Answer reckoning={reckoning} shown={shown} onGo={onGo} />
      <Cautions cautions={cautions.filter(caution => caution.signal === 'WARNING')} />
      <LeftOut entries={leftOut} onGo={onGo} />
      <Pictures plan={plan} reckoning={reckoning} shown={shown} />
      <Facts plan={plan} reckoning={reckoning} shown={shown} />
      <DryStretches shown={shown} />
      <Days plan={plan} reckoning={reckoning} shown={shown} onGo={onGo} />
      <section aria-labelledby="cautions">
        <h3 id="cautions">Beware</h3>
        <Cautions cautions={cautions.filter(caution => caution.signal !== 'WARNING')} />
        <p class="hint">{GENERAL_LINE}</p>
      </section>
    </div>
  )
}

interface Props {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
}

/** The load line and the cutaway share one moment: moving along the line empties and fills the pack. */
function Pictures({ plan, reckoning, shown }: Props) {
  const { moments, need } = reckoning
  const fullest = momentIndex(moments, need.bodyAt)
  const [chosen, setMoment] = useState<number | null>(null)
  const moment = chosen === null || chosen >= moments.length ? fullest : chosen
  const [packIndex, setPack] = useState(0)
  const pack = plan.packs[packIndex] ?? plan.packs[0]
  const limits = useMemo(() => contentsLimits(plan, reckoning, packIndex), [plan, reckoning, packIndex])

  const profile = useProfile(moments)

  return (
    <>
      <LoadLine
        moments={moments}
        stops={plan.trip.stops}
        limits={limits}
        moment={moment}
        onMoment={setMoment}
        format={shown}
        profile={profile}
      />
      <ProfileNote moments={moments} />
      {plan.packs.length > 1 ? <PackChoice plan={plan} chosen={packIndex} onChoose={setPack} /> : null}
      <Cutaway
        name={pack?.name ?? 'The pack you need'}
        at={placeWords(moments[moment]!, plan.trip.stops)}
        bodyLitres={pack?.bodyLitres ?? null}
        collarLitres={pack?.collarLitres ?? 0}
        innerHeightCm={pack?.innerHeightCm ?? null}
        need={need}
        moment={moments[moment]!}
        scaleLitres={Math.max(need.bodyLitresSafe, ...plan.packs.map(p => p.bodyLitres + p.collarLitres))}
        format={shown}
      />
    </>
  )
}

function PackChoice({
  plan,
  chosen,
  onChoose,
}: {
  plan: Plan
  chosen: number
  onChoose: (i: number) => void
}) {
  return (
    <div class="field">
      <label for="cutaway-pack">Pack in the picture</label>
      <select
        id="cutaway-pack"
        value={String(chosen)}
        onChange={event => onChoose(Number(event.currentTarget.value))}
      >
        {plan.packs.map((pack, i) => (
          <option key={`${i}-${pack.name}`} value={String(i)}>
            {pack.name}
          </option>
        ))}
      </select>
    </div>
  )
}

function Facts({ plan, reckoning, shown }: Props) {
  const { need } = reckoning
  const rows: [string, string][] = [
    ['Base weight', shown.kg(need.baseKg)],
    ['Worn and in hand', shown.kg(need.wornKg)],
    ['Room in pockets', shown.litres(need.outsideLitres)],
    ['Most water carried', shown.water(need.waterCarryLitres)],
  ]
  if (need.waterCapacityLitres !== null) rows.push(['Containers hold', shown.water(need.waterCapacityLitres)])
  if (need.waterShortLitres > 0) rows.push(['Short of water by up to', shown.water(need.waterShortLitres)])
  if (need.longestCm !== null) rows.push(['Longest rigid thing inside', shown.cm(need.longestCm)])
  if (need.widestCm !== null) rows.push(['Widest rigid thing inside', shown.cm(need.widestCm)])
  if (need.packedDensity !== null) rows.push(['Packed density', shown.density(need.packedDensity)])
  const share = need.peakLoadKg / plan.carrier.massKg
  rows.push(['Heaviest load, share of body mass', shown.percent(share)])
  return (
    <dl class="facts">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
