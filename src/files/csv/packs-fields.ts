// What a column of a table of packs may hold. What a pack and a set-up have stands in the rows of their fields; here is
// what only tables have. The words by which headings are known are ours, and their order is part of the reading.

import { FIELDS as ALL, type FieldRow } from '../../plan'
import { readAmount } from './amount'
import type { Catalogue, CellRead, Field } from './catalogue'
import type { Decimal } from './decimal'
import { isUnitOfMass, isUnitOfVolume } from './headings'

const { pack, setup } = ALL

const MASS = '(?:mass|weight|wt|weighs?)'
const RATED = String.raw`(?:rated|load rating|rating|load|carry\w*)`
const BARE = String.raw`(?:without|w\/o|no frame|frame out|frame removed|frameless|stripped)`

/** A field of a pack or a set-up under its own label; a key of `pack` or `setup` is where it stands. */
const own = (row: FieldRow, path: readonly ['pack' | 'setup', string], more: Partial<Field> = {}): Field => ({
  label: row.column?.label ?? row.label ?? path[1],
  reading: row,
  path,
  ...more,
})

/** In the order in which headings are held against them: "Total weight" is no volume, "Load capacity" neither. */
const COLUMNS = {
  setup: own(setup.name, ['setup', 'name'], { heading: /^(?:set-?up|configuration|variant|version)\b/ }),
  ratingCovers: own(setup.ratingCovers, ['setup', 'ratingCovers'], {
    heading: /\b(?:rating|load)\b.*\bcovers?\b/,
  }),
  ratedFrameOut: {
    label: 'Load rating, frame out',
    reading: setup.ratedKg,
    heading: new RegExp(String.raw`\b${RATED}\b.*\b${BARE}\b`),
  },
  rated: own(setup.ratedKg, ['setup', 'ratedKg'], {
    heading:
      /\brated\b|\b(?:load|carry\w*)\b.*\b(?:rating|limit|max|maximum|capacity)\b|\bweight\b.*\b(?:rating|limit|capacity)\b|\bcapacity\b.*[([](?:kg|lbs?)|\brating\b.*[([](?:kg|lbs?)|^max(?:imum)?\b.*\b(?:kg|lbs?)\b|\b(?:max|maximum|recommended|comfort\w*)\b.*\b(?:load|carry|weight|mass)\b|^load\b(?!.*\b(?:lift\w*|straps?)\b)/,
  }),
  massFrameOut: {
    label: 'Mass, frame out',
    reading: setup.massKg,
    heading: new RegExp(
      String.raw`\b${MASS}\b.*\b${BARE}\b|\b(?:frameless|stripped|frame out)\b.*\b${MASS}\b`,
    ),
  },
  mass: own(setup.massKg, ['setup', 'massKg'], { heading: new RegExp(String.raw`\b${MASS}\b`) }),
  denier: own(pack.denier, ['pack', 'denier'], { heading: /\bdenier\b/, read: denierIn }),
  collar: own(pack.collarLitres, ['pack', 'collarLitres'], { heading: /\bcollar\b|\bextension\b/ }),
  body: own(pack.bodyLitres, ['pack', 'bodyLitres'], {
    heading:
      /\b(?:main|body|inside|internal|interior)\b(?!.*\b(?:height|width|depth|length|frame|fabric|material)\b)|\b(?:without|excl\w*|less|minus) (?:the )?pockets?\b/,
  }),
  outside: own(pack.outsideLitres, ['pack', 'outsideLitres'], {
    heading:
      /^(?!.*\b(?:total|with|incl\w*|no|number|count|hip|belt)\b).*\bpockets?\b|\b(?:outside|outer|external|exterior)\b(?!.*\b(?:frame|fabric|material)\b)/,
  }),
  total: {
    label: 'Total with pockets',
    reading: pack.totalLitres,
    path: ['pack', 'totalLitres'],
    heading:
      /\btotal\b|\b(?:overall|advertised|claimed|stated)\b.*\b(?:vol\w*|l|lit\w+|capacity)\b|\b(?:with|incl\w*\.?) (?:the |all )?pockets?\b|\b(?:volume|capacity|lit(?:re|er)s?)\b/,
  },
  bodyFrom: own(pack.bodyFrom, ['pack', 'bodyFrom']),
  currency: own(pack.currency, ['pack', 'currency'], { heading: /\bcurrency\b/ }),
  price: own(pack.price, ['pack', 'price'], { heading: /\b(?:price|cost|msrp|rrp)\b/, read: priceIn }),
  innerHeight: own(pack.innerHeightCm, ['pack', 'innerHeightCm']),
  innerWidth: own(pack.innerWidthCm, ['pack', 'innerWidthCm']),
  innerDepth: own(pack.innerDepthCm, ['pack', 'innerDepthCm']),
  section: own(pack.section, ['pack', 'section']),
  sealed: own(pack.sealed, ['pack', 'sealed'], {
    heading: /\bsealed\b|\bwater-?proof(?!.*\brating\b)|\bseams?\b/,
  }),
  fabric: own(pack.fabric, ['pack', 'fabric'], { heading: /\b(?:fabric|material|cloth)\b/ }),
  tags: {
    label: 'Tags',
    reading: { as: 'text' },
    path: ['pack', 'tags'],
    heading: /^(?:tags?|categor\w*|types?|kinds?|class|remarks?|season)\b/,
  },
  notes: {
    label: 'Notes',
    reading: { as: 'text' },
    path: ['pack', 'notes'],
    heading: /^(?:notes?|comments?)\b/,
  },
  removable: {
    label: 'Removable frame',
    reading: { as: 'truth' },
    heading: /\b(?:remov|detach)\w*/,
  },
  frame: own(setup.frame, ['setup', 'frame'], {
    heading: /\bframe\w*\b(?!.*\b(?:mass|weight|wt)\b)|\bsupport\b/,
    read: frameIn,
  }),
  maker: {
    label: 'Maker',
    reading: { as: 'text' },
    heading: /^(?:maker|brand|manufacturer|make|company)\b/,
  },
  name: own(pack.name, ['pack', 'name'], {
    heading: /^(?:(?:back|ruck)?(?:pack|sack)|name|model|product|item)s?\b/,
  }),
} as const satisfies Record<string, Field>

export type PackFieldName = keyof typeof COLUMNS

export const PACK_FIELDS: Readonly<Record<PackFieldName, Field>> = COLUMNS
export const PACK_FIELD_NAMES = Object.keys(COLUMNS) as PackFieldName[]

export const PACKS: Catalogue<PackFieldName> = {
  fields: PACK_FIELDS,
  narrowFirst: PACK_FIELD_NAMES,
  ofUnit(word) {
    if (isUnitOfMass(word)) return 'mass'
    if (isUnitOfVolume(word)) return 'total'
    return /^(?:[€£$¥]|eur|usd|gbp|chf)$/i.test(word) ? 'price' : null
  },
  // The mass of a part is not the pack's.
  ofParts: new RegExp(String.raw`^(?:frame(?! in| out)|hip ?belt|lid|stays?|pad|rain)\b.*\b${MASS}\b`),
  reckoned:
    /\bper (?:l|lit\w+|kg|kilo\w*|lbs?|oz|g|gram\w*)\b|\bfor each\b|\bratio\b|\bscore\b|\brank\w*\b|\bindex\b|\bpoints?\b|\bstars?\b|\w\s*[÷×*]\s*\w|\b(?:m?g|oz|kg|lbs?|mass|weight|price|cost|rating|load|eur|usd)\s*\/\s*(?:l|kg|lb|lit|vol|cap|price|mass|weight|body|total)|[€$£]\s*\/|^answer\b/,
}

/** Whether a heading says that its litres are those of the pack with its pockets. */
export const saysTotal = (heading: string): boolean =>
  /\b(?:total|overall|advertised|claimed|stated)\b|\b(?:with|incl\w*)\b.*\bpockets?\b/i.test(heading)

/** A pack is had with its frame and without: two set-ups. */
export const REMOVABLE = 'removable'

function frameIn(line: string): CellRead {
  const word = line.toLowerCase()
  // What nobody knows is not said.
  if (/^(?:[-–—?]+|n\/?a|unknown|tbd)$/.test(word)) return { value: null }
  const isFixed = /\b(?:not|non)[- ]?(?:remov|detach)|(?:remov|detach)\w*\W*no\b/.test(word)
  if (!isFixed && /remov|detach|option|both|either|\bin\b.*\bout\b/.test(word)) return { value: REMOVABLE }
  if (isFixed) return { value: 'framed' }
  if (
    /frameless|\b(?:no|without)(?: an?)? (?:internal |external )?(?:frame|stay|hoop|sheet|support)|^(?:no|none|without|n|0|✗|✘|☐|false|nein|non)$/.test(
      word,
    )
  )
    return { value: 'frameless' }
  if (/frame|stay|hoop|sheet|rod|internal|external|\bwith\b|^(?:y|yes|true|x|1|✓|✔|☑|ja|oui)$/.test(word))
    return { value: 'framed' }
  return { why: 'write framed, frameless or removable' }
}

/** "210D", "210 den", or of several the thinnest, which gives way first. */
function denierIn(line: string, decimal: Decimal): CellRead {
  const each = line
    .split(/[/,;+&]|\band\b/)
    .map(part => part.replace(/\s*(?:d|den|denier)\b\.?/i, '').trim())
    .filter(part => part !== '')
    .map(part => readAmount(part, { kind: 'number', limit: pack.denier, unit: '' }, decimal))
  const slip = each.find(read => 'why' in read)
  if (slip) return slip
  const known = each.flatMap(read => ('value' in read && read.value !== null ? read.value : []))
  return { value: known.length > 0 ? Math.min(...known) : null }
}

/** "50+10 L": main body and collar, as the trade writes it (common practice, no source). */
const WITH_COLLAR = /^(\d[\d.,]*)\s*\+\s*(\d[\d.,]*)\s*(\p{L}*)$/u

/** The two amounts of litres that a cell gives, or null where it gives one. */
export function bodyAndCollar(text: string): [body: string, collar: string] | null {
  const [, body, collar, unit = ''] = WITH_COLLAR.exec(text) ?? []
  return body && collar ? [`${body} ${unit}`.trim(), `${collar} ${unit}`.trim()] : null
}

/** "15-18 kg", "15 to 18 kg": of a range the lower end, which is sure. */
const RANGE = /^(\d[\d.,]*)\s*(?:[-–—]|to)\s*\d[\d.,]*\s*(\p{L}*)$/u

/** A figure without what people write around it: "ca. 45 L", "up to 12 kg (max)", "950 g*", "210,-". */
export const bareFigure = (text: string): string =>
  text
    .replace(/^(?:ca\.?|circa|approx\.?|about|up to|max\.?)\s+/i, '')
    .replace(/\s*(?:[*†‡]+|\([^()]*\)|,-)$/, '')

export function lowerEnd(text: string): string | null {
  const [, low, unit = ''] = RANGE.exec(text) ?? []
  return low ? `${low} ${unit}`.trim() : null
}

const CURRENCY = /(?:US|CA|AU|NZ)?[€£$¥]|\b(?!RRP|VAT|TAX|MIN|MAX)[A-Z]{3}\b/
const CODES: Readonly<Record<string, string>> = { '€': 'EUR', '£': 'GBP' }

/** The currency that a cell or a heading names: "€", "EUR". Signs of several currencies stay signs. */
export function currencyIn(text: string): string | null {
  const sign = CURRENCY.exec(text)?.[0]
  return sign ? (CODES[sign] ?? sign) : null
}

function priceIn(line: string, decimal: Decimal): CellRead {
  const number = line.replace(CURRENCY, '').replace(CURRENCY, '').trim()
  return readAmount(number, { kind: 'money', limit: pack.price, unit: '' }, decimal)
}
