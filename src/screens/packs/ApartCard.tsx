// A pack apart from any trip: what it would be when full, and what it gives for its mass and price.

import type { DraftPack } from '../../plan'
import { type Formats, setupInWords } from '../../report'
import { type Comparison, OWN_LIMIT_NAMES, OWN_LIMITS } from '../../report/compare-packs'
import { capital } from '../../units'
import type { Judged, Judgement } from './judged'
import { money } from './view'

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

interface FiguresProps {
  each: Comparison
  currency: string | undefined
  formats: Formats
}

function Figures({ each, currency, formats }: FiguresProps) {
  const known = OWN_LIMIT_NAMES.flatMap(name => {
    const value = each[name]
    if (value === null) return []
    const { kind, label } = OWN_LIMITS[name]
    const text =
      kind === 'money'
        ? money(value, currency)
        : kind === 'gramsPerKg'
          ? formats.gramsPerKg(value)
          : formats.gramsPerLitre(value)
    return [{ name, label: capital(label), text }]
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
