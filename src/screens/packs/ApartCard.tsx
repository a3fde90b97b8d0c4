// A pack apart from any trip: what it would be when full, and what it gives for its mass and price.

import type { DraftPack } from '../../plan'
import { type Formats, setupInWords } from '../../report'
import { type Comparison, comparedFigure, figureText, PACK_FIGURES } from '../../report/compare-packs'
import { capital } from '../../units'
import type { Judged, Judgement } from './judged'

interface ApartProps {
  pack: DraftPack
  judged: Judged
  formats: Formats
}

/** Each set-up that has its mass and litres; what the others lack. */
export function ApartCard({ pack, judged: { settled, comparisons }, formats }: ApartProps) {
  if (!settled) return null
  const known = comparisons.flatMap((each, i) =>
    settled.packIds[each.pack] === pack.id ? [{ each, i }] : [],
  )
  if (known.length === 0)
    return <p class="hint verdict">Give its main body and its mass to see its figures.</p>
  return (
    <>
      {known.map(({ each, i }) => (
        <div key={i} class="verdict" data-figures="cited">
          <p>
            {known.length > 1 ? <bdi>{capital(settled.reckoning.packs[i]!.setup)}: </bdi> : null}
            {fullText(settled, i, formats)}
          </p>
          <Figures each={each} currency={pack.currency} formats={formats} />
        </div>
      ))}
    </>
  )
}

const fullText = ({ plan, reckoning }: Judgement, i: number, formats: Formats): string => {
  const { verdicts } = setupInWords(reckoning.packs[i]!, { plan, reckoning, formats })
  const brim = verdicts.find(({ code }) => code === 'brim')
  return brim ? brim.lead + brim.rest : 'What it can carry is not known: give its rated load.'
}

const RATIOS = ['litre', 'all-litre', 'rated-kg', 'price-litre', 'price-rated'] as const

interface FiguresProps {
  each: Comparison
  currency: string | undefined
  formats: Formats
}

function Figures({ each, currency, formats }: FiguresProps) {
  const known = RATIOS.flatMap(name => {
    const value = comparedFigure(name, each)
    if (value === null) return []
    const text = figureText(name, value, { formats, currency: currency ?? null })
    return [{ name, label: PACK_FIGURES[name].name, text }]
  })
  return (
    <dl class="facts">
      {known.map(({ name, label, text }) => (
        <div key={name}>
          <dt>{label}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  )
}
