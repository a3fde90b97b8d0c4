// Packs as a table, a row for each set-up: to look at and to sort elsewhere. It is not read back.

import type { DraftPack, DraftSetup } from '../../plan'
import { yesNo } from './choices'
import { csvText, type Marks, type WrittenCell } from './write'

type Cell = WrittenCell | undefined

const truth = (value: boolean | undefined) => (value === undefined ? null : yesNo(value))

const COLUMNS: readonly (readonly [string, (pack: DraftPack, setup: Partial<DraftSetup>) => Cell])[] = [
  ['Pack', pack => pack.name],
  ['Set-up', (_, setup) => setup.name],
  ['Main body (L)', pack => pack.bodyLitres],
  ['Collar (L)', pack => pack.collarLitres],
  ['Outside (L)', pack => pack.outsideLitres],
  ['The litres are', pack => BODY_FROM[pack.bodyFrom ?? 'stated']],
  ['Mass (kg)', (_, setup) => setup.massKg],
  ['Frame', (_, setup) => setup.frame],
  ['Load rating (kg)', (_, setup) => setup.ratedKg],
  ['The rating covers', (_, setup) => setup.ratingCovers && COVERS[setup.ratingCovers]],
  ['Sealed', pack => truth(pack.sealed)],
  ['Fabric', pack => pack.fabric],
  ['Denier', pack => pack.denier],
  ['Price', pack => pack.price],
  ['Currency', pack => pack.currency],
  ['Inner height (cm)', pack => pack.innerHeightCm],
  ['Inner width (cm)', pack => pack.innerWidthCm],
  ['Inner depth (cm)', pack => pack.innerDepthCm],
]

const BODY_FROM = {
  'test-method': 'by a test method',
  measured: 'measured',
  stated: 'stated',
  guess: 'guessed',
} as const
const COVERS = { 'contents-and-pack': 'contents and pack', contents: 'contents' } as const

/** The packs as a CSV file; a pack without a set-up has a row all the same. */
export function packsCsv(packs: readonly DraftPack[], marks: Marks = 'commas'): string {
  const rows = packs.flatMap(pack =>
    (pack.setups.length > 0 ? pack.setups : [{}]).map(setup =>
      COLUMNS.map(([, cell]) => cell(pack, setup) ?? null),
    ),
  )
  return csvText([COLUMNS.map(([heading]) => heading), ...rows], marks)
}
