// The chart's marks, ends and names, from the lines of the packs and two figures.

import type {
  FieldCorner,
  FieldLine,
  FieldMark,
  FieldName,
  FieldSpan,
  MarkShape,
} from '../../../components/graphics'
import type { Answer } from '../../../reckon'
import {
  type Area,
  axisUnit,
  type BrimLine,
  type Corner,
  FIGURE_NAMES,
  type FigureName,
  onAxis,
  PACK_FIGURES,
  type PackLine,
} from '../../../report/compare-packs'
import type { System } from '../../../units'

export interface AxesChosen {
  x: FigureName
  y: FigureName
}

/** Room and load: the two that a trip asks for. */
export const ROOM: AxesChosen = { x: 'body', y: 'bears' }
export const isRoom = ({ x, y }: AxesChosen) => x === ROOM.x && y === ROOM.y

export const SHAPES: Readonly<Record<Answer, MarkShape>> = {
  does: 'dot',
  'with-care': 'half-dot',
  'cannot-tell': 'ring',
  'does-not': 'cross',
}

/** The figures there are to choose from: known of a line, and never below nothing. */
export const figuresOf = (lines: readonly PackLine[]): FigureName[] =>
  FIGURE_NAMES.filter(
    name => !PACK_FIGURES[name].atMost && lines.some(({ figures }) => figures[name] !== undefined),
  )

/** A mark for each line of which the figure across is known. */
function marksOf(lines: readonly PackLine[], { x, y }: AxesChosen, system: System): FieldMark[] {
  const [wide, high] = [onAxis(x, 1, system), onAxis(y, 1, system)]
  const marks: FieldMark[] = []
  for (const { key, answer, figures, aside } of lines) {
    const [across, up] = [figures[x], figures[y]]
    if (across === undefined) continue
    marks.push({
      key,
      shape: SHAPES[answer ?? 'cannot-tell'],
      isAside: aside !== null,
      x: across * wide,
      y: up === undefined ? null : Math.max(0, up * high),
    })
  }
  return marks
}

interface Guides {
  corner: Corner | null
  brim: BrimLine | null
  system: System
}

/** The corner and the line of full packs in the units of the axes. */
function guidesOf({ corner, brim, system }: Guides): {
  corner: FieldCorner | null
  line: FieldLine | null
} {
  const load = (kg: number) => onAxis('bears', kg, system)
  return {
    corner: corner && {
      x: corner.litres,
      lowX: corner.lowLitres,
      sureX: corner.safeLitres,
      y: load(corner.loadKg),
      label: corner.label,
    },
    line: brim && {
      base: load(brim.outsideKg),
      slope: load(brim.kgPerLitre),
      text: 'weighs this when full',
    },
  }
}

const ROOM_BEYOND = 1.12
const ROOM_BEFORE = 0.8

/** Where the axis across begins: a little before all marks and what is asked for. */
const startOf = (values: readonly number[], asked: number | undefined): number =>
  ROOM_BEFORE * values.reduce((least, value) => Math.min(least, value), asked ?? values[0] ?? 0)

/** Where an axis ends: beyond all marks and what is asked for. */
const endOf = (values: readonly (number | null)[], asked = 0): number =>
  ROOM_BEYOND * values.reduce<number>((most, value) => Math.max(most, value ?? 0), asked || 0) || 1

function axisLabel(name: FigureName, system: System, currency: string): string {
  const { kind, name: words } = PACK_FIGURES[name]
  const unit = kind === 'money' ? currency : axisUnit(name, system)
  return unit ? `${words}, ${unit}` : words
}

/** All that is drawn between two figures; the guides where they are those that a trip asks for. */
export function fieldOf(lines: readonly PackLine[], axes: AxesChosen, asked: Guides) {
  const { system } = asked
  const marks = marksOf(lines, axes, system)
  const { corner, line } = isRoom(axes) ? guidesOf(asked) : { corner: null, line: null }
  const currencies = new Set(lines.flatMap(each => each.currency ?? []))
  const currency = currencies.size === 1 ? [...currencies].join() : ''
  const across = marks.map(({ x }) => x)
  const sure = corner && Number.isFinite(corner.sureX) ? corner.sureX : corner?.x
  const x = {
    label: axisLabel(axes.x, system, currency),
    min: startOf(across, corner?.lowX),
    max: endOf(across, sure),
  }
  const up = marks.map(mark => mark.y)
  return {
    marks,
    corner,
    line,
    x,
    y: { label: axisLabel(axes.y, system, currency), max: endOf(up, corner?.y) },
  }
}

const MOST_STARRED = 12

/** The chosen pack, those starred and the best few of those that do. */
export function namesOf(lines: readonly PackLine[], chosen: string | null, few: number): FieldName[] {
  const isChosen = ({ packId }: PackLine) => packId === chosen
  const best = lines
    .filter(({ answer, aside }) => answer === 'does' && aside === null)
    .sort((a, b) => (a.figures.carried ?? 0) - (b.figures.carried ?? 0))
    .slice(0, few)
  const starred = lines.filter(({ isStarred }) => isStarred).slice(0, MOST_STARRED)
  const wanted = new Set([...lines.filter(isChosen), ...starred, ...best])
  return [...wanted].map(line => ({
    key: line.key,
    text: line.isStarred ? `${line.name} ★` : line.name,
    isStrong: isChosen(line),
  }))
}

const stored = (name: FigureName, shown: number, system: System) => shown / onAxis(name, 1, system)

/** What was marked on the chart, as the area of its two figures. */
export const areaOf = ({ x, y }: FieldSpan, axes: AxesChosen, system: System): Area => ({
  [axes.x]: x.map(value => stored(axes.x, value, system)),
  [axes.y]: y.map(value => stored(axes.y, value, system)),
})

/** The area on a chart of these figures; null where it is of others. */
export function spanOf(area: Area | null, axes: AxesChosen, system: System): FieldSpan | null {
  const [x, y] = [area?.[axes.x], area?.[axes.y]]
  if (!x && !y) return null
  const on = (name: FigureName, ends: readonly [number, number] | undefined) => {
    const [from, to] = ends ?? [0, Number.POSITIVE_INFINITY]
    return [onAxis(name, from, system), onAxis(name, to, system)] as const
  }
  return { x: on(axes.x, x), y: on(axes.y, y) }
}
