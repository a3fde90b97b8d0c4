// What each set-up of each pack is for this need: the codes, whether it suffices, and the figures behind both.

import type { Pack, Plan, Setup } from '../plan/types'
import { type AnswersRest, answerOf, isTripsDoing } from './answers'
import { isBox, type TooLarge, tooLargeIn } from './box-fit'
import { type Parts, rigidInBody } from './need'
import { normalCdf } from './normal'
import { ratiosOf } from './ratios'
import { type Limits, reachOf } from './reach'
import { spillLitres } from './room'
import type { Moment, Need, SetupReckoning } from './types'
import { BODY_HALF_WIDTH, uniformSigma } from './uncertainty'
import { VERDICTS, verdictsOn } from './verdict-table'

/**
 * The set-ups of all packs in order. `full` is the moment whose main body is fullest; `stillSuffices` tells of each
 * set-up, by its place among all, whether it would with every figure nobody has said as large as it may be.
 */
export function judgePacks(
  need: Need,
  full: Moment,
  parts: Parts,
  stillSuffices: (setup: number) => boolean,
): SetupReckoning[] {
  const { plan, gear } = parts
  const reachDays = reachOf(need.waterCarryLitres, parts)
  // One thing as long as the longest and as wide as the widest stands for all; only a box has to be tried by itself.
  const largest = { lengthCm: need.longestCm, diameterCm: need.widestCm, widthCm: null, depthCm: null }
  const sizes = [largest, ...rigidInBody(parts).filter(isBox)]
  const takesAnything = gear.some(({ count }) => count > 0)
  const tripsDoing = isTripsDoing(plan, need)
  let judged = 0
  return plan.packs.flatMap((pack, packIndex) => {
    const tooLarge = new Set(sizes.flatMap(size => tooLargeIn(pack, size)))
    return pack.setups.map((setup, index) => {
      const answering = {
        takesAnything,
        isTripsDoing: tripsDoing,
        stillSuffices: stillSuffices(judged++),
      }
      return judge({ pack, setup, need, full, parts, tooLarge, reachDays, answering, packIndex, index })
    })
  })
}

interface Case {
  pack: Pack
  setup: Setup
  need: Need
  full: Moment
  parts: Parts
  tooLarge: ReadonlySet<TooLarge>
  reachDays: (limits: Limits) => number | null
  answering: AnswersRest & { stillSuffices: boolean }
  packIndex: number
  index: number
}

function judge(it: Case): SetupReckoning {
  const { pack, setup, need, parts } = it
  const { carrier } = parts.plan
  const figures = figuresOf(it)
  const verdicts = verdictsOn(figures, it)
  const suffices = verdicts.every(
    code =>
      VERDICTS[code].weight !== 'fails' || (code === 'undersized' && verdicts.includes('fits-with-collar')),
  )
  // Field by field, as in a list of a thousand packs spreading costs more than all the rest.
  const { gramsPerLitre, gramsPerRatedKg, pricePerLitre } = ratiosOf(pack, setup)
  return {
    name: pack.name,
    setup: setup.name,
    pack: it.packIndex,
    index: it.index,
    answer: answerOf({ suffices, verdicts }, setup, it.answering),
    verdicts,
    suffices,
    fitChance: figures.fitChance,
    fitChanceWithCollar: figures.fitChanceWithCollar,
    carriedKg: figures.carriedKg,
    ratedAgainstKg: figures.ratedAgainstKg,
    loadLimitKg: figures.loadLimitKg,
    brimLoadKg: figures.brimLoadKg,
    linerKg: figures.linerKg,
    bodyNeedLitres: figures.bodyNeedLitres,
    bodyMarginLitres: pack.bodyLitres - figures.bodyNeedLitres,
    ratedMarginKg: setup.ratedKg === null ? null : setup.ratedKg - figures.ratedAgainstKg,
    bodyMassShare: figures.carriedKg / carrier.massKg,
    gramsPerLitre,
    gramsPerRatedKg,
    pricePerLitre,
    reachDays: it.reachDays({
      bodyLitres: pack.bodyLitres,
      outsideLitres: pack.outsideLitres,
      contentsKg: contentsLimitKg(figures, need),
    }),
  }
}

/** What is left for the contents once the pack's own parts of the load are taken off its limit; null: no limit. */
export function contentsLimitKg(
  { loadLimitKg, ratedAgainstKg }: Pick<SetupReckoning, 'loadLimitKg' | 'ratedAgainstKg'>,
  { peakLoadFullWaterKg }: Pick<Need, 'peakLoadFullWaterKg'>,
): number | null {
  return loadLimitKg === null ? null : loadLimitKg - (ratedAgainstKg - peakLoadFullWaterKg)
}

/** What keeps the contents dry, where the trip is wet and the pack is not, kg. */
export const linerKgOf = ({ trip, settings }: Plan, { sealed }: Pack): number =>
  trip.wet && !sealed ? settings.linerKg : 0

function figuresOf({ pack, setup, need, full, parts }: Case) {
  const { settings } = parts.plan
  const linerKg = linerKgOf(parts.plan, pack)
  const carriedKg = need.peakLoadFullWaterKg + linerKg + setup.massKg
  // The set-up's own mass, where its rating is for contents and pack together.
  const ratedSetupKg = setup.ratingCovers === 'contents' ? 0 : setup.massKg
  const outsideKg = full.kg.total - full.bodyKg
  const bodyNeedLitres = need.bodyLitres + spillLitres(need.outsideLitres, pack.outsideLitres, parts.packing)
  const asked = { bodyNeedLitres, sigmaV: need.sigmaV }
  const chance = fitChance(pack.bodyLitres, asked, pack.bodyFrom)
  return {
    bodyNeedLitres,
    fitChance: chance,
    fitChanceWithCollar:
      pack.collarLitres === 0 ? chance : fitChance(pack.bodyLitres + pack.collarLitres, asked, pack.bodyFrom),
    carriedKg,
    linerKg,
    ratedAgainstKg: need.peakLoadFullWaterKg + linerKg + ratedSetupKg,
    loadLimitKg: loadLimit(setup, settings.framelessCeilingKg),
    brimLoadKg:
      need.packedDensity === null
        ? null
        : pack.bodyLitres * need.packedDensity + outsideKg + linerKg + ratedSetupKg,
  }
}

/** Chance that the need, as uncertain as it is, fits `litres` that are themselves known only so well. */
function fitChance(
  litres: number,
  { bodyNeedLitres, sigmaV }: { bodyNeedLitres: number; sigmaV: number },
  bodyFrom: Pack['bodyFrom'],
): number {
  const sigmaC = litres * uniformSigma(BODY_HALF_WIDTH[bodyFrom])
  return normalCdf((litres - bodyNeedLitres) / Math.hypot(sigmaV, sigmaC))
}

/** What a set-up may carry: its rating, and without a frame no more than the ceiling; null where nothing says, kg. */
export function loadLimit({ frame, ratedKg }: Setup, framelessCeilingKg: number): number | null {
  if (frame === 'framed') return ratedKg
  return ratedKg === null ? framelessCeilingKg : Math.min(framelessCeilingKg, ratedKg)
}
