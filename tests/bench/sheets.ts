// The same figures by a spreadsheet (HyperFormula), laid out in four ways that people use: a cell for each item at each
// moment, SUMIF or SUMPRODUCT over the items at each moment, and the items added up by group first.

import { HyperFormula, type RawCellContent } from 'hyperformula'
import { type Figures, STREAMS, type Told } from './figures'

export const SPREADSHEET = `HyperFormula ${HyperFormula.version}`

export const LAYOUTS = ['grid', 'SUMIF', 'SUMPRODUCT', 'grouped'] as const
export type Layout = (typeof LAYOUTS)[number]

export interface Sheet {
  figures: () => Figures
  /** Writes another mass into one item's cell; the sheet recalculates what hangs on it. */
  setMass: (item: number, massKg: number) => void
}

type Cells = RawCellContent[][]
/** What is added up over the items: the columns of the gear that have it as it is and as rubbish. */
const ADDED = { kg: ['F', 'G'], rigid: ['H', 'I'], soft: ['J', 'K'] } as const
const WAYS = STREAMS.flatMap((_, stream) => [0, 1].map(state => ({ stream, state })))
const MASS_COLUMN = 1

export function sheetOf(told: Told, layout: Layout): Sheet {
  const config = { licenseKey: 'gpl-v3', useArrayArithmetic: layout === 'SUMPRODUCT', maxRows: 50_000 }
  const hf = HyperFormula.buildFromSheets(
    {
      Gear: gear(told),
      Groups: groups(told),
      ...grids(told, layout),
      ...boxes(told),
      Moments: moments(told, layout),
      Setups: setups(told),
    },
    config,
  )
  const id = (name: string) => hf.getSheetId(name)!
  const column = (name: string, col: number, rows: number) =>
    hf
      .getRangeValues({
        start: { sheet: id(name), col, row: 0 },
        end: { sheet: id(name), col, row: rows - 1 },
      })
      .map(([value]) => value as number)
  return {
    figures: () => ({
      loadKg: column('Moments', 15, told.moments.length),
      bodyLitres: column('Moments', 18, told.moments.length),
      carriedKg: column('Setups', 3, told.setups.length),
      marginLitres: column('Setups', 4, told.setups.length),
    }),
    setMass: (item, massKg) => {
      hf.setCellContents({ sheet: id('Gear'), row: item, col: MASS_COLUMN }, [[massKg]])
    },
  }
}

/** A stream, B mass, C count, D rubbish, E container; F G kg, H I rigid, J K soft, L M inside litres, as they are and as rubbish. */
function gear({ rows }: Told): Cells {
  return rows.map((row, i) => {
    const n = i + 1
    const both = (litres: number) => [litres, litres * row.leaves]
    const kg = [`=B${n}*C${n}`, `=F${n}*D${n}`]
    const litres = [row.rigidLitres, row.softLitres, row.insideLitres].flatMap(both)
    return [row.stream, row.massKg, row.count, row.leaves, row.container, ...kg, ...litres]
  })
}

const over = (column: string, { rows }: Told) => `Gear!$${column}$1:$${column}$${rows.length}`

/** Three rows, kg, rigid and soft litres, with a cell for each way of changing. */
function groups(told: Told): Cells {
  return Object.values(ADDED).map(columns =>
    WAYS.map(({ stream, state }) => `=SUMIF(${over('A', told)},${stream},${over(columns[state]!, told)})`),
  )
}

/** A cell for each item at each moment, a row for each moment. */
function grids(told: Told, layout: Layout): Record<string, Cells> {
  if (layout !== 'grid') return {}
  const grid = ([left, used]: readonly [string, string]): Cells =>
    told.moments.map((_, m) =>
      told.rows.map(({ stream }, i) => {
        const [a, b] = [letter(2 * stream), letter(2 * stream + 1)]
        return `=Gear!${left}${i + 1}*Moments!${a}${m + 1}+Gear!${used}${i + 1}*Moments!${b}${m + 1}`
      }),
    )
  return { GridKg: grid(ADDED.kg), GridRigid: grid(ADDED.rigid), GridSoft: grid(ADDED.soft) }
}

/** A row for each container: A to L what is in it by way of changing, M its room, then what is over at each moment. */
function boxes(told: Told): Record<string, Cells> {
  if (told.roomLitres.length === 0) return {}
  const used = new Set(told.rows.flatMap(({ container, stream }) => (container < 0 ? [] : [stream])))
  const cells = told.roomLitres.map((room, box): RawCellContent[] => {
    const n = box + 1
    const inside = WAYS.map(({ stream, state }) =>
      used.has(stream)
        ? `=SUMIFS(${over(state ? 'M' : 'L', told)},${over('E', told)},${box},${over('A', told)},${stream})`
        : 0,
    )
    const overs = told.moments.map(
      (_, m) => `=MAX(0,SUMPRODUCT($A${n}:$L${n},Moments!$A$${m + 1}:$L$${m + 1})-$M${n})`,
    )
    return [...inside, room, ...overs]
  })
  return { Boxes: cells }
}

/** A to L units, M water, N water that takes soft room, O water wanted; P load, Q rigid, R soft, S main-body litres,
 * T load with all the water wanted. */
function moments(told: Told, layout: Layout): Cells {
  const [skeleton, softBulk] = [0, 1].map(
    term => (n: number) => `Q${n}*${told.perRigidLitre[term]}+R${n}*${told.perSoftLitre[term]}`,
  ) as [(n: number) => string, (n: number) => string]
  return told.moments.map(({ units, waterKg, waterSoftLitres, wantedKg }, m) => {
    const n = m + 1
    const sum = (what: keyof typeof ADDED) => summed(told, layout, { what, row: n })
    const column = letter(13 + m)
    const spilt = told.roomLitres.length ? `+SUM(Boxes!${column}1:${column}${told.roomLitres.length})` : ''
    return [
      ...units,
      waterKg,
      waterSoftLitres,
      wantedKg,
      `=${sum('kg')}+M${n}`,
      `=${sum('rigid')}`,
      `=${sum('soft')}+N${n}${spilt}`,
      `=MAX(${skeleton(n)},${softBulk(n)})`,
      `=P${n}+O${n}`,
    ]
  })
}

/** What the items come to at the moment of a row. */
function summed(
  told: Told,
  layout: Layout,
  { what, row }: { what: keyof typeof ADDED; row: number },
): string {
  const grid = { kg: 'GridKg', rigid: 'GridRigid', soft: 'GridSoft' }[what]
  const line = Object.keys(ADDED).indexOf(what) + 1
  const eachWay = (term: (stream: number, column: string) => string) =>
    WAYS.map(({ stream, state }, way) => `${letter(way)}${row}*${term(stream, ADDED[what][state]!)}`).join(
      '+',
    )
  switch (layout) {
    case 'grid':
      return `SUM(${grid}!A${row}:${letter(told.rows.length - 1)}${row})`
    case 'SUMIF':
      return eachWay((stream, column) => `SUMIF(${over('A', told)},${stream},${over(column, told)})`)
    case 'SUMPRODUCT':
      return eachWay((stream, column) => `SUMPRODUCT((${over('A', told)}=${stream})*${over(column, told)})`)
    case 'grouped':
      return `SUMPRODUCT(A${row}:L${row},Groups!$A$${line}:$L$${line})`
  }
}

/** A litres, B mass, C liner; D carried, E margin. The most of all moments stands in the first row: F litres, G load. */
function setups(told: Told): Cells {
  const rows = told.moments.length
  const most = [`=MAX(Moments!S1:S${rows})`, `=MAX(Moments!T1:T${rows})`]
  return told.setups.map(({ bodyLitres, massKg, linerKg }, i) => [
    bodyLitres,
    massKg,
    linerKg,
    `=$G$1+C${i + 1}+B${i + 1}`,
    `=A${i + 1}-$F$1`,
    ...(i === 0 ? most : []),
  ])
}

/** A, B, … Z, AA, … of a column counted from 0. */
function letter(column: number): string {
  const last = String.fromCharCode(65 + (column % 26))
  return column < 26 ? last : letter(Math.floor(column / 26) - 1) + last
}
