// Names out of a file nobody vouches for: one line of visible text, short enough for a list.

import { GPX_CAPS } from './limits'

// Controls, direction marks and overrides, invisible spaces and lone surrogates. The two joiners (U+200C, U+200D)
// stay: Persian and emoji are written with them.
const UNSEEN = /[\p{Cc}\p{Cs}\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]/gu

/** The name as it can be shown: invisible marks gone, spaces single, at most 200 characters. */
export function cleanName(text: string): string {
  const visible = text.replace(/\s+/gu, ' ').replace(UNSEEN, '').trim()
  if (visible.length <= GPX_CAPS.nameLength) return visible
  // Cut between whole characters: half of a pair would be a lone surrogate again.
  return visible
    .slice(0, GPX_CAPS.nameLength)
    .replace(/[\ud800-\udbff]$/, '')
    .trim()
}

// Whole words that often name a place with water, in some languages hikers meet. A hint only.
const WATER_WORDS =
  /(?<!\p{L})(water|springs?|wells?|fountain|tap|creek|stream|brook|river|lake|tarn|quelle|brunnen|bach|source|fontaine|ruisseau|fuente|manantial|r[ií]o|fonte|sorgente|acqua|agua|eau)(?!\p{L})/iu

/** Whether a name sounds like water. It is never more than a reason to look. */
export const soundsLikeWater = (name: string): boolean => WATER_WORDS.test(name)
