// Packs as a table, a row for each set-up: to look at and to sort elsewhere. It is not read back.

import { type DraftPack, type DraftSetup, FIELDS, type FieldRow, tableWord } from '../../plan'
import { bareUnitOf } from '../../units'
import { yesNo } from './choices'
import { csvText, type Marks, type WrittenCell } from './write'

type Column = readonly [row: FieldRow, read: (pack: DraftPack, setup: Partial<DraftSetup>) => unknown]

const ofPack = (...keys: (keyof typeof FIELDS.pack & keyof DraftPack)[]) =>
  keys.map((key): Column => [FIELDS.pack[key], pack => pack[key]])
const ofSetup = (...keys: (keyof typeof FIELDS.setup)[]) =>
  keys.map((key): Column => [FIELDS.setup[key], (_, setup) => setup[key]])

const COLUMNS = [
  ...ofPack('name'),
  ...ofSetup('name'),
  ...ofPack('bodyLitres', 'collarLitres', 'outsideLitres'),
  [FIELDS.pack.bodyFrom, (pack: DraftPack) => pack.bodyFrom ?? FIELDS.pack.bodyFrom.usual] as const,
  ...ofSetup('massKg', 'frame', 'ratedKg', 'ratingCovers'),
  ...ofPack(
    'sealed',
    'fabric',
    'denier',
    'price',
    'currency',
    'innerHeightCm',
    'innerWidthCm',
    'innerDepthCm',
  ),
]

function headingOf([row]: Column): string {
  const label = row.column?.label ?? row.label ?? ''
  const unit = row.as === 'amount' && bareUnitOf(row.kind, 'metric')
  return unit ? `${label} (${unit})` : label
}

function cellOf(row: FieldRow, value: unknown): WrittenCell {
  if (row.as === 'choice' && typeof value === 'string') return tableWord(row, value)
  if (typeof value === 'boolean') return yesNo(value)
  return typeof value === 'string' || typeof value === 'number' ? value : null
}

/** The packs as a CSV file; a pack without a set-up has a row all the same. */
export function packsCsv(packs: readonly DraftPack[], marks: Marks = 'commas'): string {
  const rows = packs.flatMap(pack =>
    (pack.setups.length > 0 ? pack.setups : [{}]).map(setup =>
      COLUMNS.map(([row, read]) => cellOf(row, read(pack, setup))),
    ),
  )
  return csvText([COLUMNS.map(headingOf), ...rows], marks)
}
