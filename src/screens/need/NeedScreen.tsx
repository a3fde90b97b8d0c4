// Need: the answer and its warnings first, then the pictures, then closed lines that each carry their figure.

import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'
import { later as lazily } from '../../components/frame'
import { LoadLineTable } from '../../components/graphics'
import { Warnings } from '../../components/judged'
import { Cautions, LeftOut } from '../../components/pieces'
import { AskHint } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning, Working } from '../../reckon'
import {
  cautionsOf,
  contentsLimits,
  type Formats,
  GENERAL_LINE,
  isOfThisTrip,
  leastText,
  type Missing,
  missingOf,
  takesNothing,
} from '../../report'
import { openTrip, reckoned } from '../../store'
import { counted } from '../../units'
import { Answer } from './Answer'
import { Days } from './Days'
import { DryStretches } from './DryStretches'
import { Facts } from './Facts'
import { Line } from './Line'
import './need.css'
import { Pictures } from './Pictures'
import { useProfile } from './Profile'
import { Sure } from './Sure'

const PartyFigures = lazily(async () => (await import('../party')).PartyFigures)

/** What a pack lacks is told with the packs: of sixty nobody wants to read it here. */
const isOfPacks = (path: string) => path.startsWith('packs/')

/** `isDesk`: answer and warnings stand at the side of all places. */
export function NeedScreen({ isDesk = false }: { isDesk?: boolean }) {
  const formats = useFormats()
  if (!reckoned.value) return <p class="hint loading">Working it out…</p>
  const { plan, leftOut, reckoned: result, party } = reckoned.value
  if (!result.ok)
    return (
      <div class="screen">
        <h2>Need</h2>
        <p class="problem">{result.problem.said}</p>
      </div>
    )
  const { reckoning, working } = result
  const missing = missingOf(plan)
  const cautions = cautionsOf(plan, reckoning, formats)
  const later = (children: ComponentChildren) => <Below isLong={isLong(plan, reckoning)}>{children}</Below>
  const parts = { plan, reckoning, formats, missing }
  const isEmpty = takesNothing(plan)
  return (
    <div class="screen need">
      <h2 class="unseen">Need</h2>
      {isDesk ? null : (
        <div class="stack">
          <Answer {...parts} />
          <Warnings cautions={cautions.filter(isOfThisTrip)} />
        </div>
      )}
      <LeftOut entries={leftOut.filter(({ path }) => !isOfPacks(path))} />
      {isEmpty && !openTrip.value?.profile ? null : <Pictures {...parts} cautions={cautions} later={later} />}
      {party ? <PartyFigures /> : null}
      {isEmpty ? null : <AskHint />}
      {later(
        <div class="lines">
          <Lines {...parts} working={working} />
          <Line label="Safety notes" figure={cautions.length + 1} figures="cited" isMadeAhead>
            {() => (
              <>
                <Cautions cautions={cautions} />
                <p class="hint">{GENERAL_LINE}</p>
              </>
            )}
          </Line>
        </div>,
      )}
    </div>
  )
}

interface LinesProps {
  plan: Plan
  reckoning: Reckoning
  working: Working
  formats: Formats
  missing: Missing
}

function Lines({ working, ...props }: LinesProps) {
  const { plan, reckoning, formats } = props
  const isEmpty = takesNothing(plan)
  const profile = useProfile(reckoning.moments)
  const km = reckoning.moments.at(-1)?.km ?? 0
  return (
    <>
      {isEmpty ? null : <Sure {...props} />}
      <DryStretches reckoning={reckoning} formats={formats} />
      <Line
        label="Day by day"
        figure={`${km > 0 ? `${formats.km(km)}, ` : ''}${counted(reckoning.days.length, 'day')}`}
        figures="typed"
      >
        {() => <Days {...{ plan, reckoning, working, formats }} />}
      </Line>
      <Line
        label="Figures"
        figure={
          isEmpty
            ? ''
            : `base weight ${leastText(missingOf(plan), 'mass', formats.kg(reckoning.need.baseKg))}`
        }
        figures="why"
      >
        {() => (
          <>
            {isEmpty ? null : <Facts plan={plan} reckoning={reckoning} formats={formats} />}
            <LoadLineTable
              moments={reckoning.moments}
              stops={plan.trip.stops}
              limits={contentsLimits(plan, reckoning)}
              format={formats}
              profile={profile}
            />
          </>
        )}
      </Line>
    </>
  )
}

/** So much to draw that the page would stand still for it. */
const isLong = ({ packs, gear }: Plan, { days }: Reckoning) =>
  packs.length + days.length + gear.length / 10 > 200

/** What follows the answer: of a long trip each part is drawn by itself after it, so that the page answers in between. */
function Below({ isLong, children }: { isLong: boolean; children: ComponentChildren }) {
  const [isDue, setDue] = useState(!isLong)
  useEffect(() => {
    if (isDue) return
    const timer = setTimeout(() => setDue(true), 0)
    return () => clearTimeout(timer)
  }, [isDue])
  return isDue ? children : null
}
