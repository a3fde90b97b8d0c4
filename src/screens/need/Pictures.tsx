// The load line and the cutaway share one moment: moving along the line empties and fills the pack, and the list beside
// it tells what is carried then.

import type { ComponentChildren } from 'preact'
import { useMemo, useState } from 'preact/hooks'
import { SelectOne } from '../../components/fields'
import { Cutaway, LoadLine, placeWords } from '../../components/graphics'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import {
  type Caution,
  carriedAt,
  contentsLimits,
  type Formats,
  leastText,
  type Missing,
  momentIndex,
  takesNothing,
} from '../../report'
import { reckoned } from '../../store'
import { Carried, keyOf, layersOf, partText } from './Carried'
import { ProfileNote, useProfile } from './Profile'

interface PicturesProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  missing: Missing
  cautions: readonly Caution[]
  /** What is dear to draw waits in it on a long trip. */
  later: (children: ComponentChildren) => ComponentChildren
}

export function Pictures({ plan, reckoning, formats, missing, cautions, later }: PicturesProps) {
  const { moments, need } = reckoning
  const fullest = momentIndex(moments, need.bodyAt)
  const [chosen, setMoment] = useState<number | null>(null)
  const moment = chosen === null || chosen >= moments.length ? fullest : chosen
  // The pack that is taken, until another is chosen.
  const [picked, setPack] = useState<number | null>(null)
  const packIndex = picked ?? reckoned.value?.taken ?? 0
  const limits = useMemo(() => contentsLimits(plan, reckoning, packIndex), [plan, reckoning, packIndex])
  const warnings = useMemo(() => warnedMoments(cautions, reckoning), [reckoning])
  const profile = useProfile(moments)
  return (
    <div class="pictures stack" data-figures="why">
      <div class="figures">
        {later(
          <>
            <LoadLine
              moments={moments}
              stops={plan.trip.stops}
              limits={limits}
              moment={moment}
              onMoment={setMoment}
              format={formats}
              profile={profile}
              warnings={warnings}
              isPeakTold={takesNothing(plan)}
              isBare
            />
            <ProfileNote moments={moments} />
          </>,
        )}
      </div>
      {takesNothing(plan)
        ? null
        : later(<Inside {...{ plan, reckoning, formats, missing, moment, packIndex, setPack }} />)}
    </div>
  )
}

/** The departures that a warning is about. */
const warnedMoments = (cautions: readonly Caution[], { moments }: Reckoning): number[] =>
  cautions
    .filter(({ signal }) => signal === 'WARNING')
    .flatMap(({ at = [] }) => at)
    .map(stop => moments.findIndex(moment => moment.stop === stop && moment.phase === 'depart'))
    .filter(index => index >= 0)

interface InsideProps extends Omit<PicturesProps, 'cautions' | 'later'> {
  moment: number
  packIndex: number
  setPack: (index: number) => void
}

/** What is carried then, and what the pack holds of it: of an empty list that would be water alone. */
function Inside({ plan, reckoning, formats, missing, moment, packIndex, setPack }: InsideProps) {
  const { need, moments } = reckoning
  const parts = useMemo(() => carriedAt(plan, reckoning, moment), [plan, reckoning, moment])
  const [named, setNamed] = useState<string | null>(null)
  const pack = plan.packs[packIndex] ?? plan.packs[0]
  const layers = layersOf(parts)
  const at = layers.findIndex(({ part }) => keyOf(part) === named)
  const hand = {
    chosen: at < 0 ? null : at,
    onChoose: (index: number) => setNamed(keyOf(layers[index]!.part)),
    textOf: (index: number) => partText(layers[index]!.part, formats),
  }
  // Of many packs these are the most elements by far, and none of them changes from moment to moment.
  const choice = useMemo(
    () =>
      plan.packs.length > 1 ? (
        <SelectOne
          label="Pack in the picture"
          options={plan.packs.map(({ name }, i) => ({ value: String(i), label: name }))}
          chosen={String(packIndex)}
          onChoose={i => setPack(Number(i))}
        />
      ) : null,
    [plan.packs, packIndex, setPack],
  )
  const scaleLitres = useMemo(
    () => Math.max(need.bodyLitresSafe, ...plan.packs.map(p => p.bodyLitres + p.collarLitres)),
    [need, plan.packs],
  )
  return (
    <div class="inside">
      <Carried {...{ parts, named, reckoning, formats, missing, moment, pack: packIndex }} />
      <div class="inside-pack">
        <Cutaway
          name={pack?.name ?? 'The pack you need'}
          at={placeWords(moments[moment]!, plan.trip.stops)}
          bodyLitres={pack?.bodyLitres ?? null}
          collarLitres={pack?.collarLitres ?? 0}
          innerHeightCm={pack?.innerHeightCm ?? null}
          need={need}
          atLeast={missing.litres.length > 0}
          moment={moments[moment]!}
          scaleLitres={scaleLitres}
          format={formats}
          layers={layers}
          hand={hand}
          isBare
        />
        {pack ? <Room {...{ room: pack, litres: moments[moment]!.bodyLitres, missing, formats }} /> : null}
      </div>
      {choice}
    </div>
  )
}

interface RoomProps {
  room: { bodyLitres: number; collarLitres: number }
  litres: number
  missing: Missing
  formats: Formats
}

/** "2.5 L over the brim", "3.1 L free"; with litres missing "at least 2.5 L over the brim", "at most 3.1 L free". */
function Room({ room, litres, missing, formats }: RoomProps) {
  const free = room.bodyLitres - litres
  return (
    <p class="room">
      {free < 0 ? (
        <>
          <strong>{leastText(missing, 'litres', formats.litres(-free))}</strong> over the brim
        </>
      ) : (
        <>
          {missing.litres.length > 0 ? 'at most ' : ''}
          {formats.litres(free)} free
        </>
      )}
    </p>
  )
}
