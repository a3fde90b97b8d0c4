// Need: the answer and its warnings first, then the pictures behind it, what would make it surer, the days, and what
// else to beware of.

import type { ComponentChildren } from 'preact'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { OwnOffer } from '../../components/confidence'
import { SelectOne, useSystem } from '../../components/fields'
import { Cutaway, LoadLine, placeWords } from '../../components/graphics'
import { Cautions, LeftOut } from '../../components/pieces'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import {
  belongsAtAnswer,
  cautionsOf,
  contentsLimits,
  type Formats,
  formatsIn,
  GENERAL_LINE,
  type Missing,
  missingOf,
  momentIndex,
  takesNothing,
} from '../../report'
import { openTrip, reckoned } from '../../store'
import { Answer } from './Answer'
import { Days } from './Days'
import { DryStretches } from './DryStretches'
import { ProfileNote, useProfile } from './Profile'
import { Sure } from './Sure'

export function NeedScreen() {
  const formats = formatsIn(useSystem())
  if (!reckoned.value) return <p class="hint loading">Working it out…</p>
  const { plan, leftOut, reckoned: result } = reckoned.value
  if (!result.ok)
    return (
      <div class="screen">
        <h2>Need</h2>
        <p class="problem">{result.problem.said}</p>
      </div>
    )
  const { reckoning } = result
  const missing = missingOf(plan)
  const cautions = cautionsOf(plan, reckoning, formats)
  return (
    <div class="screen">
      <h2>Need</h2>
      <Answer {...{ plan, reckoning, formats, missing }} />
      <OwnOffer />
      <Cautions cautions={cautions.filter(belongsAtAnswer)} />
      <LeftOut entries={leftOut} />
      {takesNothing(plan) && !openTrip.value?.profile ? null : (
        <Pictures {...{ plan, reckoning, formats, missing }} />
      )}
      <Below isLong={isLong(plan, reckoning)}>
        {takesNothing(plan) ? null : (
          <>
            <Sure {...{ plan, reckoning, formats, missing }} />
            <Facts plan={plan} reckoning={reckoning} formats={formats} />
          </>
        )}
        <DryStretches formats={formats} />
        <Days plan={plan} reckoning={reckoning} formats={formats} />
        <section aria-labelledby="cautions">
          <h3 id="cautions">Beware</h3>
          <Cautions cautions={cautions.filter(caution => !belongsAtAnswer(caution))} />
          <p class="hint">{GENERAL_LINE}</p>
        </section>
      </Below>
    </div>
  )
}

/** So much to draw that the page would stand still for it. */
const isLong = ({ packs, gear }: Plan, { days }: Reckoning) =>
  packs.length + days.length + gear.length / 10 > 200

/** What follows the load line: of a long trip drawn after it, so that the page answers in between. */
function Below({ isLong, children }: { isLong: boolean; children: ComponentChildren }) {
  const [isDue, setDue] = useState(!isLong)
  useEffect(() => {
    if (isDue) return
    const timer = setTimeout(() => setDue(true), 0)
    return () => clearTimeout(timer)
  }, [isDue])
  return isDue ? children : null
}

interface Props {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

/** The load line and the cutaway share one moment: moving along the line empties and fills the pack. */
function Pictures({ plan, reckoning, formats, missing }: Props & { missing: Missing }) {
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
      <div class="figures" data-figures="why">
        <LoadLine
          moments={moments}
          stops={plan.trip.stops}
          limits={limits}
          moment={moment}
          onMoment={setMoment}
          format={formats}
          profile={profile}
        />
        <Why about={{ kind: 'moment-load', moment }} figure="What is carried then" />
      </div>
      <ProfileNote moments={moments} />
      {takesNothing(plan) ? null : <Below isLong={isLong(plan, reckoning)}>{inside()}</Below>}
    </>
  )

  /** What the pack holds: of an empty list that would be water alone. */
  function inside() {
    return (
      <>
        {plan.packs.length > 1 ? <PackChoice plan={plan} chosen={packIndex} onChoose={setPack} /> : null}
        <div class="figures" data-figures="why">
          <Cutaway
            name={pack?.name ?? 'The pack you need'}
            at={placeWords(moments[moment]!, plan.trip.stops)}
            bodyLitres={pack?.bodyLitres ?? null}
            collarLitres={pack?.collarLitres ?? 0}
            innerHeightCm={pack?.innerHeightCm ?? null}
            need={need}
            atLeast={missing.litres.length > 0}
            moment={moments[moment]!}
            scaleLitres={Math.max(need.bodyLitresSafe, ...plan.packs.map(p => p.bodyLitres + p.collarLitres))}
            format={formats}
          />
          <Why about={{ kind: 'moment-litres', moment, pack: packIndex }} figure="What is inside then" />
        </div>
      </>
    )
  }
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
    <SelectOne
      label="Pack in the picture"
      options={plan.packs.map(({ name }, i) => ({ value: String(i), label: name }))}
      chosen={String(chosen)}
      onChoose={i => onChoose(Number(i))}
    />
  )
}

function Facts({ plan, reckoning, formats }: Props) {
  const { need } = reckoning
  const rows: [string, string][] = [
    ['Base weight', formats.kg(need.baseKg)],
    ['Worn and in hand', formats.kg(need.wornKg)],
    ['Room in pockets', formats.litres(need.outsideLitres)],
    ['Most water carried', formats.water(need.waterCarryLitres)],
  ]
  if (need.waterCapacityLitres !== null)
    rows.push(['Containers hold', formats.water(need.waterCapacityLitres)])
  if (need.waterShortLitres > 0) rows.push(['Short of water by up to', formats.water(need.waterShortLitres)])
  if (need.longestCm !== null) rows.push(['Longest rigid thing inside', formats.cm(need.longestCm)])
  if (need.widestCm !== null) rows.push(['Widest rigid thing inside', formats.cm(need.widestCm)])
  if (need.packedDensity !== null) rows.push(['Packed density', formats.density(need.packedDensity)])
  const share = need.peakLoadFullWaterKg / plan.carrier.massKg
  rows.push(['Heaviest load, share of body mass', formats.percent(share)])
  return (
    <div class="figures" data-figures="why">
      <dl class="facts">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Why about={{ kind: 'facts' }} figure="What each is made of" />
    </div>
  )
}
