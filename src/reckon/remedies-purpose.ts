// What a thing is for, as far as its use, its name and its group tell: what nobody should be told to leave at home, and
// what suffers outside. The words are ours and English; a thing known by none of them is not taken to be safe to leave,
// which is why leaving comes last and asks first.

import type { Item } from '../plan/types'

/** What keeps a hiker warm, dry, found, fed or well, by the beginnings of words; `_` stands for a blank, or for nothing. */
const BEGINNINGS =
  'tent tarp shelter biv hammock ground_sheet footprint guy_line sleep quilt mattress blanket emergency ' +
  'jacket coat parka fleece puffy insulat warm rain waterproof shell poncho glove mitt beanie balaclava ' +
  'base_layer boot shoe gaiter first_aid medic pill insulin inhal prescription adrenal epineph allerg bandage ' +
  'blister glasses spectacles goggles contact_lens sun repellent compass phone messenger satellite radio ' +
  'beacon transceiver whistle torch lamp lantern flashlight head_l batter power charger cable stove burner ' +
  'cooker fuel cartridge canister lighter match water filter purif chlorin bottle food bear repair knife tool ' +
  'toilet trowel liner dry_bag dry_sack rope harness helmet crampon ice_axe snow avalanche probe shovel ' +
  'safety passport ticket money wallet baby nappy nappies diaper leash'

/** The same by whole words. */
const WHOLE = 'pole stake peg pad mat down hat net map gps gas pot cover spike key document paper dog'

/** Each beginning as one word and as two. */
const STARTS = BEGINNINGS.split(' ').flatMap(word => [word.replaceAll('_', ' '), word.replaceAll('_', '')])
const WORDS = new Set(WHOLE.split(' ').flatMap(word => [word, `${word}s`]))

/** Whether a text names something that is not left at home lightly. */
function namesNeeded(text: string): boolean {
  const words = text.toLowerCase().split(/[^\p{L}\d]+/u)
  const line = ` ${words.join(' ')}`
  return words.some(word => WORDS.has(word)) || STARTS.some(start => line.includes(` ${start}`))
}

/** What one sleeps in or on, and what is warm only while it is dry. */
const SPOILT_WET = /\b(?:sleep|quilt|pads?\b|mats?\b|mattress|pillow|blanket|down\b|puffy|insulat)/i

const said = ({ name, group }: Item) => `${name} ${group}`

/** Whether leaving it at home may only be told where the hiker has marked it as one that could stay. */
export const isNeeded = (item: Item): boolean => item.use !== 'kept' || namesNeeded(said(item))

/** Whether rain or a tear outside would spoil a meal or a night: food, sleeping and insulated things. */
export const suffersOutside = (item: Item): boolean => item.use === 'daily' || SPOILT_WET.test(said(item))

/** What one sleeps under. */
const SHELTER = /\b(?:tent|tarp|shelter|biv|hammock)/i

/** Whether it is called a shelter, or a part of one. */
export const isShelter = (item: Item): boolean => SHELTER.test(said(item))

/** Long and slim enough to be strapped: our judgement. */
const SLIM_CM = 30
const SLIM_RATIO = 3

/** Whether a thing of which nobody has said so may ride outside: what is soft, and what is long and slim. */
export function ridesOutsideUnasked({
  build,
  inside,
  lengthCm,
  diameterCm,
  widthCm,
  depthCm,
}: Item): boolean {
  // It was put into its container for a reason.
  if (inside !== null) return false
  if (build === 'soft') return true
  const acrossCm = Math.max(diameterCm ?? 0, widthCm ?? 0, depthCm ?? 0)
  return lengthCm !== null && lengthCm >= SLIM_CM && lengthCm >= SLIM_RATIO * acrossCm
}
