// Packs as a table, a row for each set-up: what it writes it also reads. Figures that follow from the others come last;
// the reader knows them by their headings and leaves them.

import {
  completePack,
  type DraftPack,
  type DraftSetup,
  defaults,
  type PackDocument,
  tableWord,
} from '../../plan'
import { type ApartFigures, apartFigures } from '../../reckon'
import { bareUnitOf } from '../../units'
import { amountIn } from './catalogue'
import { yesNo } from './choices'
import { PACK_FIELDS, type PackFieldName } from './packs-fields'
import { lacking } from './packs-join'
import { csvText, type Marks, type WrittenCell } from './write'

const WRITTEN: readonly PackFieldName[] = [
  'name',
  'setup',
  'body',
  'collar',
  'outside',
  'bodyFrom',
  'mass',
  'frame',
  'rated',
  'ratingCovers',
  'sealed',
  'fabric',
  'denier',
  'price',
  'currency',
  'innerHeight',
  'innerWidth',
  'innerDepth',
  'section',
  'tags',
]

const RECKONED: readonly [heading: string, figure: keyof ApartFigures][] = [
  ['Mass for each litre (g/L)', 'gramsPerLitre'],
  ['Mass for each litre with pockets (g/L)', 'gramsPerTotalLitre'],
  ['Mass for each kg rated (g/kg)', 'gramsPerRatedKg'],
  ['Price for each litre', 'pricePerLitre'],
  ['Price for each kg rated', 'pricePerRatedKg'],
]

function headingOf(name: PackFieldName): string {
  const field = PACK_FIELDS[name]
  const amount = amountIn(field)
  const unit = amount && bareUnitOf(amount.kind, 'metric')
  return unit ? `${field.label} (${unit})` : field.label
}

/** The packs as a CSV file; a pack without a set-up has a row all the same. */
export function packsCsv(packs: readonly DraftPack[], marks: Marks = 'commas'): string {
  const rows = packs.flatMap((pack, i) =>
    (pack.setups.length > 0 ? pack.setups : [{}]).map(setup => [
      ...WRITTEN.map(name => cellOf(name, { pack, setup, i })),
      ...figuresOf(pack, setup),
    ]),
  )
  return csvText([[...WRITTEN.map(headingOf), ...RECKONED.map(([heading]) => heading)], ...rows], marks)
}

interface Written {
  pack: DraftPack
  setup: Partial<DraftSetup>
  i: number
}

function cellOf(name: PackFieldName, { pack, setup, i }: Written): WrittenCell {
  const { path, reading } = PACK_FIELDS[name]
  const [part, key] = path!
  const value = ({ pack, setup } as Record<string, object>)[part]![key as never] as unknown
  // A row needs a name to be read.
  if (name === 'name' && !value) return `Pack ${i + 1}`
  if (reading.as === 'choice')
    return typeof value === 'string'
      ? tableWord(reading, value)
      : name === 'bodyFrom'
        ? tableWord(reading, reading.usual as string)
        : null
  if (typeof value === 'boolean') return yesNo(value)
  if (Array.isArray(value)) return value.join(', ')
  return typeof value === 'string' || typeof value === 'number' ? value : null
}

/** What follows from the rest, where all it follows from is known. */
function figuresOf(pack: DraftPack, setup: Partial<DraftSetup>): WrittenCell[] {
  const { id: _id, ...facts } = setup
  const known = { ...pack, name: pack.name ?? '', setups: [{ name: '', ...facts }] }
  if (lacking(known, facts).length > 0) return RECKONED.map(() => null)
  const { id: _pack, ...document } = known
  const whole = completePack(document as PackDocument)
  const figures = apartFigures(whole, whole.setups[0]!, defaults.SETTINGS)
  return RECKONED.map(([, figure]) => {
    const value = figures[figure]
    return typeof value === 'number' ? Number(value.toPrecision(6)) : null
  })
}
