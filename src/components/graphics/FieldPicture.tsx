// Many things between two measures, as marks that can be named, opened and chosen by an area; a thousand of them are but
// a few shapes to the page.

import type { ReadonlySignal } from '@preact/signals'
import { useMemo } from 'preact/hooks'
import { FieldDrawing, type FieldDrawn, planField } from './field-drawing'
import { FieldHand, type FieldSpan, type HandProps } from './field-hand'
import type { PlacedMark } from './field-plan'
import { Axes, type Axis, type Frame, useFrame } from './Plot'
import { px } from './scale'
import { usePainted } from './use-painted'
import './field.css'

interface FieldProps extends FieldDrawn, Pick<HandProps, HandDoor> {
  says: string
  x: Axis
  y: Axis
  /** The mark whose page is open. */
  chosen: string | null
  area: FieldSpan | null
}

type HandDoor = 'label' | 'lit' | 'textOf' | 'onLit' | 'onOpen' | 'onSpan'

export function FieldPicture({ says, x, y, marks, names, corner, line, chosen, area, ...hand }: FieldProps) {
  const hasStrip = useMemo(() => marks.some(mark => mark.y === null), [marks])
  const { ref, frame, isMeasured } = useFrame(x, y, hasStrip)
  const isDrawn = usePainted(isMeasured)
  const made = useMemo(() => {
    if (!isDrawn) return null
    const drawn = { marks, names, corner, line }
    const plan = planField(drawn, frame)
    return { plan, drawing: <FieldDrawing drawn={drawn} plan={plan} frame={frame} /> }
  }, [isDrawn, frame, marks, names, corner, line])
  return (
    <div class="drawing" ref={ref}>
      <Axes {...{ says, x, y, frame }}>
        {area ? <Area area={area} frame={frame} /> : null}
        {made?.drawing}
        {made ? <Rings {...made.plan} chosen={chosen} lit={hand.lit} /> : null}
      </Axes>
      {made ? <FieldHand {...hand} frame={frame} placed={made.plan.placed} /> : null}
    </div>
  )
}

interface RingsProps {
  placed: readonly PlacedMark[]
  radiusPx: number
  chosen: string | null
  lit: ReadonlySignal<string | null>
}

/** Around the mark whose page is open, and the one that is named. */
function Rings({ placed, radiusPx, chosen, lit }: RingsProps) {
  const at = (key: string | null) => (key === null ? undefined : placed.find(mark => mark.key === key))
  const ring = (mark: PlacedMark | undefined, name: string) =>
    mark ? <circle class={name} cx={px(mark.x)} cy={px(mark.y)} r={radiusPx + 5} /> : null
  return (
    <>
      {ring(at(chosen), 'chosen-ring')}
      {ring(at(lit.value), 'lit-ring')}
    </>
  )
}

function Area({ area, frame }: { area: FieldSpan; frame: Frame }) {
  const { left, right, top, bottom } = frame
  const within = (value: number, from: number, to: number) => Math.min(to, Math.max(from, value))
  const [x1, x2] = area.x.map(value => within(frame.x(value), left, right)) as [number, number]
  const [y2, y1] = area.y.map(value => within(frame.y(value), top, bottom)) as [number, number]
  return <rect class="area" x={px(x1)} y={px(y1)} width={px(x2 - x1)} height={px(y2 - y1)} />
}
