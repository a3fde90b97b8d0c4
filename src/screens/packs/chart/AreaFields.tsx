// The area of the chart that is shown alone, typed instead of dragged.

import { useEffect, useState } from 'preact/hooks'
import { LooseField, readQuantity } from '../../../components/fields'
import { WhenOpen } from '../../../components/pieces'
import type { Formats } from '../../../report'
import { type Area, axisUnit, type FigureName, figureText, PACK_FIGURES } from '../../../report/compare-packs'
import type { System } from '../../../units'
import type { AxesChosen } from './axes'

type Ends = readonly [number, number]

const NO_TEXTS = { from: '', to: '' }
const LIMIT = { min: 0, max: 1e6, unit: '' }

/** "main body 40 L to 60 L, price up to 200". */
export const areaText = (area: Area, formats: Formats): string =>
  (Object.keys(area) as FigureName[])
    .map(name => {
      const text = (value: number) => figureText(name, value, { formats, currency: null })
      const [from, to] = area[name]!
      const words = PACK_FIGURES[name].name.toLowerCase()
      if (!Number.isFinite(to)) return `${words} from ${text(from)}`
      return from > 0 ? `${words} ${text(from)} to ${text(to)}` : `${words} up to ${text(to)}`
    })
    .join(', ')

interface AreaProps {
  axes: AxesChosen
  system: System
  area: Area | null
  onArea: (area: Area | null) => void
}

export function AreaFields({ axes: { x, y }, ...rest }: AreaProps) {
  return (
    <WhenOpen class="more" summary="Show a part only">
      {() => (
        <div class="fields">
          {[x, ...(y === x ? [] : [y])].map(figure => (
            <FromTo key={figure} figure={figure} {...rest} />
          ))}
        </div>
      )}
    </WhenOpen>
  )
}

/** The area with other ends of one figure; null once it has none. */
function withEnds(area: Area | null, figure: FigureName, [from, to]: Ends): Area | null {
  const { [figure]: _old, ...others } = area ?? {}
  const next = from > 0 || Number.isFinite(to) ? { ...others, [figure]: [from, to] as const } : others
  return Object.keys(next).length > 0 ? next : null
}

function FromTo({ figure, system, area, onArea }: Omit<AreaProps, 'axes'> & { figure: FigureName }) {
  const { name, kind } = PACK_FIGURES[figure]
  const [texts, setTexts] = useState(NO_TEXTS)
  const isAsked = area?.[figure] !== undefined
  useEffect(() => {
    if (!isAsked) setTexts(NO_TEXTS)
  }, [isAsked])
  const read = (text: string, label: string) =>
    readQuantity(text, {
      kind: kind === 'own' ? 'number' : kind,
      label,
      limit: LIMIT,
      system,
      fine: figure === 'mass',
    })
  const field = (end: 'from' | 'to') => {
    const label = `${name}, ${end}`
    return (
      <LooseField
        label={label}
        unit={axisUnit(figure, system) || undefined}
        text={texts[end]}
        reading={read(texts[end], label)}
        onText={text => {
          const next = { ...texts, [end]: text }
          setTexts(next)
          const made = read(text, name)
          if (!('value' in made)) return
          // The other end stays, typed or dragged.
          const [from, to] = area?.[figure] ?? [0, Number.POSITIVE_INFINITY]
          onArea(
            withEnds(
              area,
              figure,
              end === 'from' ? [made.value ?? 0, to] : [from, made.value ?? Number.POSITIVE_INFINITY],
            ),
          )
        }}
      />
    )
  }
  return (
    <>
      {field('from')}
      {field('to')}
    </>
  )
}
