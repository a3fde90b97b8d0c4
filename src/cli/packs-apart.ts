// A table of packs, with a plan or apart from any: each set-up with its figures, as JSON or as a table to read.

import {
  guessPacksLayout,
  lacking,
  PACK_FIELDS,
  plainLitresHeading,
  readGrid,
  readPackRows,
  type TablePack,
  unitlessMasses,
} from '../files/csv'
import { completePack, defaults, type Pack, type PackDocument, type Plan, type Setup } from '../plan'
import {
  type ApartFigures,
  apartFigures,
  type Measure,
  measureOf,
  reckon,
  type SetupReckoning,
} from '../reckon'
import { ANSWERS, FIT_LINE, formatsIn, takesNothing } from '../report'
import { formatQuantity, listText, type System } from '../units'
import { aligned } from './columns'

/** Figures that only gear gives. */
type Told = 'fitChance' | 'bodyMarginLitres' | 'ratedMarginKg'

/** One set-up of the table; with a plan also its answer, verdicts and figures there. */
export interface PackEntry
  extends ApartFigures,
    Partial<Omit<SetupReckoning, keyof ApartFigures | Told | 'name' | 'setup'>>,
    Partial<Record<Told, number | null>> {
  name: string
  setup: string
  frame: Setup['frame']
  massKg: number
  bodyLitres: number
  ratedKg: number | null
  price: number | null
  /** Null: none is asked for, or a part of it is not known. */
  measure: number | null
}

export interface PacksTable {
  entries: PackEntry[]
  /** What could not be read or is missing, by row. */
  problems: string[]
  doubts: string[]
}

const NO_HEADINGS =
  'no row names the columns: the first one must say which holds the pack, its mass, its main body and its frame'

/** Reads and judges the packs of a table. A problem of the whole table or the plan is the only one there is. */
export function packEntries(text: string, plan: Plan | null, measure: Measure | null): PacksTable {
  const grid = readGrid(text)
  if (!grid.ok) return { entries: [], problems: [grid.message], doubts: [] }
  const layout = guessPacksLayout(grid, { system: 'metric' })
  if (layout.headerRow === null) return { entries: [], problems: [NO_HEADINGS], doubts: [] }
  const read = readPackRows(grid, layout)
  const plain = plainLitresHeading(grid, layout)
  const doubts = [
    ...(plain === null
      ? []
      : [`"${plain}" is taken as the total with pockets: call it "Main body" if it is that alone.`]),
    ...unitlessMasses(grid, layout).map(
      ({ heading, unit }) =>
        `"${heading}" names no unit: read in ${unit}. Write "${heading} (${unit})", or the unit it is in.`,
    ),
    ...read.doubts,
  ]
  const known = read.packs.map(pack => ({ ...knownPart(pack), rows: pack.rows }))
  const packs = known.flatMap(({ pack }) => pack ?? [])
  const judged = plan && reckon({ ...plan, packs })
  const problems = [
    ...read.problems.map(
      ({ row, column, text, why }) =>
        `row ${row}${column ? `, ${column.name || `column ${column.number}`}` : ''}: "${text}": ${why}`,
    ),
    ...known.flatMap(({ problems }) => problems),
  ]
  if (judged && !judged.ok) return { entries: [], problems: [judged.problem.message], doubts }
  const noGear = plan !== null && takesNothing(plan)
  const settings = plan?.settings ?? defaults.SETTINGS
  const setups = packs.flatMap(pack => pack.setups.map(setup => ({ pack, setup })))
  const entries = setups.map(({ pack, setup }, i): PackEntry => {
    const figures = apartFigures(pack, setup, settings)
    const onTrip = judged?.reckoning.packs[i]
    return {
      ...onTrip,
      name: pack.name,
      setup: setup.name,
      frame: setup.frame,
      massKg: setup.massKg,
      bodyLitres: pack.bodyLitres,
      ratedKg: setup.ratedKg,
      price: pack.price,
      ...figures,
      ...(onTrip && !noGear && { outgrows: onTrip.verdicts.includes('outgrows-its-support') }),
      // Of a trip without gear nothing is told but that.
      ...(noGear && { fitChance: null, bodyMarginLitres: null, ratedMarginKg: null }),
      measure: measure && measureOf(measure, pack, setup),
    }
  })
  return { entries, problems, doubts }
}

/** The pack with those of its set-ups that lack nothing, and a line for each that does. */
function knownPart({ pack, rows }: TablePack): { pack: Pack | null; problems: string[] } {
  const problems: string[] = []
  const setups = pack.setups.filter(setup => {
    const lacks = lacking(pack, setup).map(field => PACK_FIELDS[field].label)
    if (lacks.length > 0)
      problems.push(
        `row ${rows.join(', ')}: "${pack.name}", ${setup.name}: left out, it needs ${listText(lacks.map(lack => `"${lack}"`))}`,
      )
    return lacks.length === 0
  })
  // What is lacking has just been looked for.
  const whole = setups.length > 0 ? completePack({ ...pack, setups } as PackDocument) : null
  return { pack: whole, problems }
}

/** The figures a table may be sorted by: those of the packs, … */
const OF_A_PACK = [
  'massKg',
  'bodyLitres',
  'totalLitres',
  'ratedKg',
  'price',
  'gramsPerLitre',
  'gramsPerTotalLitre',
  'gramsPerRatedKg',
  'pricePerLitre',
  'pricePerRatedKg',
  'brimLoadKg',
  'brimLimitKg',
  'measure',
] as const
/** … and those that only a trip gives. */
export const OF_A_TRIP = [
  'carriedKg',
  'bodyNeedLitres',
  'bodyMarginLitres',
  'ratedMarginKg',
  'fitChance',
  'reachDays',
] as const
export const FIGURES = [...OF_A_PACK, ...OF_A_TRIP] as const
export type Figure = (typeof FIGURES)[number]

interface Sorting {
  by: Figure | null
  down: boolean
}

/** In the order of a figure; what is not known comes last either way, equals stay as they are listed. */
function sorted(entries: readonly PackEntry[], { by, down }: Sorting): PackEntry[] {
  if (by === null) return down ? entries.toReversed() : [...entries]
  const known = (entry: PackEntry) => entry[by] ?? null
  return entries.toSorted((a, b) => {
    const [x, y] = [known(a), known(b)]
    if (x === null || y === null) return Number(x === null) - Number(y === null)
    return down ? y - x : x - y
  })
}

/** The table to read. */
export function packsReport(entries: readonly PackEntry[], sorting: Sorting, system: System): string {
  const formats = formatsIn(system)
  const { by } = sorting
  const onTrip = entries.some(({ answer }) => answer !== undefined)
  const hasGear = onTrip && entries.some(({ fitChance }) => fitChance !== null)
  const columns: [head: string, cell: (entry: PackEntry) => string][] = [
    ['Pack', ({ name, setup }) => `${name}, ${setup}`],
    ['Mass', ({ massKg }) => formats.gear(massKg)],
    ['Main body', ({ bodyLitres }) => formats.litres(bodyLitres)],
    ['Rated', ({ ratedKg }) => (ratedKg === null ? 'not known' : formats.kg(ratedKg))],
    ['For each litre', ({ gramsPerLitre }) => formats.gramsPerLitre(gramsPerLitre)],
  ]
  if (onTrip) columns.unshift(['Answer', answerText])
  if (!hasGear) columns.push(['Filled to the brim', brimWords])
  if (by && !ALWAYS.includes(by)) columns.push([by, entry => figureText(entry[by] ?? null)])
  const rows = sorted(entries, sorting).map(entry => columns.map(([, cell]) => cell(entry)))
  const lines = aligned([columns.map(([head]) => head), ...rows])
  const notes = [hasGear ? [] : BRIM_LINE, onTrip && !hasGear ? NO_GEAR : [], onTrip ? FIT_LINE : []].flat()
  return `${[...lines, '', ...notes].join('\n')}\n`
}

/** Those that have a column anyway. */
const ALWAYS: readonly Figure[] = ['massKg', 'bodyLitres', 'ratedKg', 'gramsPerLitre']
const NO_GEAR = 'The plan has no gear: what the packs are for its trip can’t be told.'
const BRIM_LINE = `A full pack is taken to weigh ${formatQuantity('number', defaults.SETTINGS.brimKgPerLitre, { system: 'metric' })} kg for each litre: our judgement. With a plan it is your gear that decides.`

const answerText = ({ answer }: PackEntry): string =>
  answer ? `${ANSWERS[answer].mark} ${ANSWERS[answer].words}` : ''

function brimWords({ brimLimitKg, outgrows }: PackEntry): string {
  if (brimLimitKg === null) return 'can’t tell: no limit known'
  return outgrows ? 'more than it can carry' : 'can be carried'
}

const figureText = (value: number | null): string =>
  value === null ? 'not known' : formatQuantity('number', value, { system: 'metric', digits: 2 })
