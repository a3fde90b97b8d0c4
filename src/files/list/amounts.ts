// Masses, litres and numbers of pieces inside a line. The units module reads each; here they are only found.
// What decides between two readings is a judgement of ours, said beside the row.

import { bareUnitOf, parseQuantity, type System } from '../../units'

// After a mark comes a digit, so that a point which ends a sentence stays outside; no repetition holds another.
const NUMBER = String.raw`(?:(?:\d{1,3}(?:['’\u202f\u00a0]\d{3})+|\d+)(?:[.,]\d(?:\d|[.,](?=\d))*)?|[.,]\d+)(?:[½¼¾])?|[½¼¾]`
const MASS_UNIT = 'kilograms?|kilos?|kg|grams?|gr|g|mg|pounds?|lbs?|ounces?|oz'
const VOLUME_UNIT = String.raw`litres?|liters?|ml|cl|dl|l|cu\.? ?in|cubic inch(?:es)?|in3|in³|fl\.? ?oz|qt`
const END = String.raw`(?![\p{L}\p{N}])`
const AMOUNT = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,])(?:(?<mass>(?:${NUMBER})\s?(?:pounds?|lbs?)\s?(?:${NUMBER})\s?(?:ounces?|oz)${END}|(?:${NUMBER})\s?(?:${MASS_UNIT})${END})|(?<volume>(?:${NUMBER})\s?(?:${VOLUME_UNIT})${END}))\.?(?<each>\s?(?:each|ea|apiece|total|altogether|in all)\b)?`,
  'giu',
)
const COUNTS = [
  new RegExp(
    String.raw`(?<![\p{N}.,])(?<n>\d{1,4})\s?[x×]\s?(?=(?:${NUMBER})\s?(?:${MASS_UNIT})${END})`,
    'iu',
  ),
  // "2 x 1 L bottle"; not "3 x 3 m tarp".
  new RegExp(String.raw`^(?<n>\d{1,4})\s?[x×]\s?(?=(?:${NUMBER})\s?(?:${VOLUME_UNIT})${END})`, 'iu'),
  /^(?<n>\d{1,4})\s?[x×]\s+(?!\d)/iu,
  /[([]\s?(?:[x×]\s?(?<n>\d{1,4})|(?<m>\d{1,4})\s?[x×])\s?[)\]]/iu,
  /(?<![\d\s]\s*|\d)\s[x×]\s?(?<n>\d{1,4})(?=\s|$|[,;)])/iu,
  /(?<=\p{L})\s+(?<n>\d{1,4})[x×](?=\s*$|[,;])/iu,
  /(?<![\p{L}\p{N}.,])[([]?(?<n>\d{1,4})\s?(?:pcs?|pieces?|pairs?)\b\.?(?: of\b)?[)\]]?/iu,
  /(?<!\p{L})(?:qty|quantity)\b\.?:?\s?(?<n>\d{1,4})(?![\p{L}\p{N}.,])/iu,
]
const WHOLE_COUNT = /^(?:[x×]\s?(\d{1,4})|(\d{1,4})\s?[x×]|(\d{1,4})\s?(?:pcs?|pieces?|pairs?)\.?)$/iu

// "3 tent pegs"; not "2 person tent", "3 season bag", "10 mm rope".
const PLAIN_COUNT = /^(?<n>[2-9]|[1-3]\d)\s+(?=(?<what>\p{L}[\p{L}\s'’-]*?)\s*(?:$|[,;:(–—\d]))/u
const NO_PIECES =
  /^(?:persons?|people|men|mans?|women|seasons?|ways?|days?|nights?|layers?|ply|inch|ins?|in|ft|mm|cm|m|ml|cl|dl|l|litres?|liters?|oz|ounces?|g|grams?|kg|lbs?|pounds?|ah|mah|wh|w|v|burners?|fingers?|poles?|hours?|h|of)\b/i

export interface Found {
  kind: 'mass' | 'volume'
  text: string
  at: number
  end: number
  /** Whether the mass is that of all pieces together. */
  ofAll: boolean
}

/** Every mass and volume with its unit in a text, in order. */
export function amountsIn(text: string): Found[] {
  return [...text.matchAll(AMOUNT)].map(match => {
    const { mass, volume, each } = match.groups!
    const end = match.index + match[0].length
    const ofAll = /total|alto|all/i.test(each ?? '')
    return { kind: mass ? 'mass' : 'volume', text: (mass ?? volume)!, at: match.index, end, ofAll }
  })
}

interface Counted {
  count: number
  /** The text without the count. */
  rest: string
  /** A sentence, where the number could be another thing. */
  doubt?: string
}

/** A number of pieces at the head, the end or in the middle of a text: "2 x", "x2", "3 pairs", "8 pegs". */
export function takeCount(text: string): Counted | null {
  for (const pattern of COUNTS) {
    const match = pattern.exec(text)
    if (!match) continue
    const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`
    return { count: Number(match.groups!.n ?? match.groups!.m), rest }
  }
  const plain = PLAIN_COUNT.exec(text.trim())
  const { n, what = '' } = plain?.groups ?? {}
  if (!plain || NO_PIECES.test(what) || !/[^s]s$/i.test(what)) return null
  return {
    count: Number(n),
    rest: text.trim().slice(plain[0].length),
    doubt: `Read as ${n} of them, the mass as that of each.`,
  }
}

export type Cell =
  | { kind: 'count'; count: number }
  | { kind: 'mass' | 'volume' | 'bare'; text: string }
  | { kind: 'words'; text: string }

/** What a whole cell is: an amount by itself, a bare number, or words. */
export function cellKind(text: string, system: System): Cell {
  const count = WHOLE_COUNT.exec(text)
  if (count) return { kind: 'count', count: Number(count[1] ?? count[2] ?? count[3]) }
  if (/^[\d.,'’\s½¼¾]+$/u.test(text) && /\d|[½¼¾]/u.test(text)) return { kind: 'bare', text }
  if (!/\d|[½¼¾]/u.test(text)) return { kind: 'words', text }
  for (const kind of ['mass', 'volume'] as const) {
    const parsed = parseQuantity(kind, text.replace(/^[~≈]\s?/, ''), {
      system,
      bareUnit: bareUnitOf(kind, system, kind === 'mass'),
    })
    if (parsed.ok && !parsed.empty) return { kind, text }
  }
  return { kind: 'words', text }
}
