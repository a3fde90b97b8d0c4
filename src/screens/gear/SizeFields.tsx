// The size of a rigid thing, round or a box: by it is told how the thing goes into a pack.

import { useState } from 'preact/hooks'
import { Choice, Field, useEdited } from '../../components/fields'
import type { DraftItem } from '../../plan'
import { useItemHome } from './item-home'

const SHAPES = [
  { value: 'round', label: 'Round' },
  { value: 'box', label: 'Box' },
] as const
type Shape = (typeof SHAPES)[number]['value']

/** The sizes that only a thing of this shape has. */
const ONLY = { round: ['diameterCm'], box: ['widthCm', 'depthCm'] } as const

interface SizeProps {
  item: DraftItem
  at: (...parts: string[]) => string
}

export function SizeFields({ item, at }: SizeProps) {
  const home = useItemHome()
  const edited = useEdited()
  const [chosen, setChosen] = useState<Shape | null>(null)
  const isBox = item.widthCm !== undefined || item.depthCm !== undefined
  const shape = isBox ? 'box' : item.diameterCm !== undefined ? 'round' : (chosen ?? 'round')

  /** What the other shape alone has goes, its unread texts too: their fields are gone then. */
  function choose(next: Shape) {
    setChosen(next)
    const gone = ONLY[shape]
    if (next === shape) return
    for (const field of gone)
      if (edited.unreadAt(at(field)) !== undefined) edited.set(at(field), undefined, null)
    if (!gone.some(field => item[field] !== undefined)) return
    home.edit(item.id, `${item.name || 'Item'}, shape`, of =>
      gone.reduce((rest, field) => {
        const { [field]: _gone, ...kept } = rest
        return kept
      }, of),
    )
  }

  return (
    <div class="size-fields">
      <Choice label="Shape" options={SHAPES} chosen={shape} onChoose={choose} />
      <div class="fields">
        <Field path={at('lengthCm')} />
        {shape === 'round' ? (
          <Field path={at('diameterCm')} />
        ) : (
          <>
            <Field path={at('widthCm')} />
            <Field path={at('depthCm')} />
          </>
        )}
      </div>
      <p class="hint">With all of its sizes, Packs tells how it goes into each pack.</p>
    </div>
  )
}
