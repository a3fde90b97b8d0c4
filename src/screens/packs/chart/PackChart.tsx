// The field of packs: main body against the load each can carry, or any two figures; named by passing over it, opened by
// a click, and an area of it shows its packs alone.

import { useMemo, useState } from 'preact/hooks'
import { Choice, SelectOne } from '../../../components/fields'
import { FieldPicture } from '../../../components/graphics'
import type { Plan } from '../../../plan'
import type { Reckoning } from '../../../reckon'
import type { Formats } from '../../../report'
import {
  type Area,
  brimLineOf,
  cornerOf,
  type FigureName,
  fieldText,
  foremostText,
  isInArea,
  PACK_FIGURES,
  type PackLine,
} from '../../../report/compare-packs'
import { AreaFields, areaText } from './AreaFields'
import { type AxesChosen, areaOf, fieldOf, figuresOf, isRoom, namesOf, ROOM, spanOf } from './axes'
import { ChartKey } from './ChartKey'
import { ChartTable } from './ChartTable'
import { light, lit } from './lit'
import { lineText, Named } from './Named'
import './chart.css'

export interface PackChartProps {
  /** All that may be drawn, whether in the area or not. */
  lines: readonly PackLine[]
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** The pack whose page is open. */
  chosen: string | null
  /** The table of the packs stands below: none of its own is needed. */
  hasTable: boolean
  /** Apart from any trip there are no answers. */
  hasAnswers: boolean
  area: Area | null
  onArea: (area: Area | null) => void
  onOpen: (packId: string) => void
}

const VIEWS = [
  { value: 'room', label: 'Room and load' },
  { value: 'other', label: 'Two figures' },
] as const

const FEW = { phone: 2, desk: 4 }

export function PackChart(props: PackChartProps) {
  const { lines, plan, reckoning, formats, chosen, hasTable, hasAnswers, area, onArea } = props
  const { system } = formats
  const [other, setOther] = useState<AxesChosen>({ x: 'body', y: 'mass' })
  const [view, setView] = useState<'room' | 'other'>('room')
  const axes = view === 'room' ? ROOM : other
  const byKey = useMemo(() => new Map(lines.map(line => [line.key, line])), [lines])
  const corner = useMemo(() => cornerOf(plan, reckoning, formats), [plan, reckoning, formats])
  const field = useMemo(
    () => fieldOf(lines, axes, { corner, brim: brimLineOf(plan, reckoning), system }),
    [lines, axes, system, plan, reckoning, corner],
  )
  const names = useMemo(
    () => namesOf(lines, chosen, hasTable ? FEW.desk : FEW.phone),
    [lines, chosen, hasTable],
  )
  const kind = lines.some(({ name, packId }, i) => name && lines[i - 1]?.packId === packId)
    ? 'set-up'
    : 'pack'
  const open = (key: string) => props.onOpen(byKey.get(key)!.packId)
  const chosenKey = lines.find(({ packId }) => packId === chosen)?.key ?? null
  const text = { axes, formats, hasAnswers }
  return (
    <section class="pack-chart" aria-label="Chart">
      <div class="cluster chart-views">
        <p data-figures="cited">
          {fieldText(lines, null, { kind, hasAnswers })}{' '}
          {isRoom(axes) ? '' : foremostText(lines, axes.y, formats)}
          {field.marks.length < lines.length
            ? ` ${lines.length - field.marks.length} not drawn: ${PACK_FIGURES[axes.x].name.toLowerCase()} not known.`
            : ''}
        </p>
        <AreaFields key={`${axes.x} ${axes.y}`} {...{ axes, system, area, onArea }} />
        <Choice label="Chart" options={VIEWS} chosen={view} onChoose={setView} />
        {view === 'other' ? <TwoFigures {...{ lines, other }} onOther={setOther} /> : null}
      </div>
      <figure class="picture chart field-picture">
        <FieldPicture
          {...field}
          {...{ names, lit }}
          says={fieldText(lines, corner, { kind, hasAnswers })}
          chosen={chosenKey}
          area={spanOf(area, axes, system)}
          label="Packs on the chart"
          textOf={key => lineText(byKey.get(key)!, text)}
          onLit={light}
          onOpen={open}
          onSpan={span => onArea(areaOf(span, axes, system))}
        />
        <Named byKey={byKey} {...text} onOpen={open} />
      </figure>
      {area ? (
        <div class="cluster" data-figures="typed">
          <span>Only {areaText(area, formats)}</span>
          <button type="button" class="quiet" onClick={() => onArea(null)}>
            Show all again
          </button>
        </div>
      ) : null}
      <ChartKey
        {...{ hasAnswers }}
        marks={field.marks}
        line={field.line !== null}
        corner={field.corner !== null}
      />
      {hasTable ? null : (
        <ChartTable lines={area ? lines.filter(line => isInArea(line, area)) : lines} {...text} />
      )}
    </section>
  )
}

interface TwoProps {
  lines: readonly PackLine[]
  other: AxesChosen
  onOther: (axes: AxesChosen) => void
}

function TwoFigures({ lines, other, onOther }: TwoProps) {
  const options = figuresOf(lines).map(value => ({ value, label: PACK_FIGURES[value].name }))
  const select = (label: string, axis: 'x' | 'y') => (
    <SelectOne<FigureName>
      label={label}
      options={options}
      chosen={other[axis]}
      onChoose={figure => onOther({ ...other, [axis]: figure })}
    />
  )
  return (
    <div class="cluster">
      {select('Up', 'y')}
      {select('Across', 'x')}
    </div>
  )
}
