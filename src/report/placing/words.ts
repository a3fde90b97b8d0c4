// The placing of the load in words: advice, never a verdict. What is said of studies is what was read of them; their
// standing is that of data/sources.json.

import { itemName, type Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { listText } from '../../units'
import type { Caution } from '../caution'
import type { Formats } from '../formats'
import { placeText } from '../places'
import { ASSUMED, type Centre, type Moved, type Placing } from './layout'

export interface PlacingWords {
  now: string
  /** Null where nothing is worth moving. */
  after: string | null
  /** One a thing moved. */
  things: { name: string; mass: string; from: string; to: string }[]
  basis: string
  lean: string | null
}

export const newtonMetres = (value: number): string => `${value.toFixed(0)}\u00a0N·m`
const degrees = (value: number): string => `${value.toFixed(0)}°`

export const movedName = ({ item }: Moved): string => (item === null ? 'Water' : itemName(item))

/** Whole centimetres: the places are assumed, so more would pretend. */
export const wholeCm = (metres: number, { cm }: Formats): string => cm(Math.round(100 * metres))
const behindText = ({ behindM }: Centre, formats: Formats) => wholeCm(behindM, formats)

export const lessText = ({ now, after }: Placing, { percent }: Formats): string =>
  percent(1 - after.momentNm / now.momentNm)

export function placingWords(
  placing: Placing,
  { plan, reckoning, formats }: { plan: Plan; reckoning: Reckoning; formats: Formats },
): PlacingWords {
  const { now, after, moved, kg, depthCm, heightCm, isMeasured, moment } = placing
  const { stop, phase } = reckoning.moments[moment]!
  const at = placeText({ stop, phase, name: plan.trip.stops[stop]!.name }, reckoning.moments)
  const names = listText(moved.map(movedName))
  const sizes = `${wholeCm(depthCm / 100, formats)} deep and ${wholeCm(heightCm / 100, formats)} high inside`
  return {
    now: `At the heaviest, ${at}, the main body holds ${formats.kg(kg)}. Packed evenly it has its centre ${behindText(now, formats)} behind the hips: ${newtonMetres(now.momentNm)} about them, standing upright.`,
    after:
      moved.length > 0
        ? `With ${names} against the back and the rest outside ${moved.length === 1 ? 'it' : 'them'}: ${behindText(after, formats)} and ${newtonMetres(after.momentNm)}, ${lessText(placing, formats)} less.`
        : null,
    things: moved.map(one => ({
      name: movedName(one),
      mass: formats.kg(one.kg),
      from: wholeCm(one.fromCm / 100, formats),
      to: wholeCm(one.toCm / 100, formats),
    })),
    basis: `${isMeasured ? `The pack is ${sizes}` : `The pack is taken as ${sizes}, from its litres`}; the back panel is taken as ${wholeCm(ASSUMED.backBehindM, formats)} behind the hips. Pockets, what is strapped on${reckoning.need.waterShortLitres > 0 ? ', water your bottles do not hold' : ''} and the pack itself are left out.`,
    lean:
      now.leanDeg === null || after.leanDeg === null
        ? null
        : `A forward lean of about ${degrees(now.leanDeg)} balances it${moved.length > 0 && degrees(now.leanDeg) !== degrees(after.leanDeg) ? `, then ${degrees(after.leanDeg)}` : ''}. It comes from usual shares of the body’s mass (our estimate, not checked).`,
  }
}

/** What is known of where a load should ride; keys of data/sources.json. */
export const STUDIES: readonly { text: string; sourceKeys: readonly string[] }[] = [
  {
    text: 'Close to the back: a review asks for it, and mechanics agrees. A centimetre closer counts about six times as much as a centimetre higher. (Of the review the abstract was read.)',
    sourceKeys: ['knapik-2004', 'static-balance'],
  },
  {
    text: 'High or low: studies disagree. High cost less oxygen in one. It made no difference in another. In a third it worked the back muscles more. (Of each the abstract was read.)',
    sourceKeys: ['stuempfle-2004', 'johnson-2000', 'bobet-norman-1984'],
  },
  {
    text: 'On rough ground a low or middle place may be steadier.',
    sourceKeys: ['knapik-2004'],
  },
]

export const COMFORT: Caution = {
  signal: 'CAUTION',
  about: 'load',
  text: 'Comfort is personal: walk a little with it loaded before you leave. Numb or tingling arms, pain, or a pull backwards can end in injury: stop, take it off, and repack or lighten it.',
}
