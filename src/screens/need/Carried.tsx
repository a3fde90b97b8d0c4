// What is carried at a moment, by kind, with mass and litres.

import { useId } from 'preact/hooks'
import { bandOf, Patterns, Swatch } from '../../components/graphics'
import { Why } from '../../components/why'
import type { Reckoning } from '../../reckon'
import type { CarriedPart, Formats, Missing } from '../../report'

/** The layers of the main body, bottom to top, each with what it is. */
export const layersOf = (parts: readonly CarriedPart[]) =>
  parts
    .filter(({ litres }) => litres > 0)
    .map(part => ({ part, band: bandOf(part.share, part.nth), litres: part.litres }))
    .reverse()

/** A group of the gear may be called as what is always there: "Water". */
export const keyOf = ({ share, nth }: CarriedPart): string => `${share} ${nth}`

/** "Sleep, 1.4 kg, 9.9 L". */
export const partText = ({ word, kg, litres }: CarriedPart, formats: Formats): string =>
  `${word}, ${formats.kg(kg)}, ${formats.litres(litres)}`

interface CarriedProps {
  parts: readonly CarriedPart[]
  /** The key of the one that is singled out. */
  named: string | null
  reckoning: Reckoning
  formats: Formats
  missing: Missing
  moment: number
  pack: number
}

export function Carried({ parts, named, reckoning, formats, missing, moment, pack }: CarriedProps) {
  const of = useId()
  const { kg, bodyLitres } = reckoning.moments[moment]!
  const bands = parts.map(({ share, nth }) => bandOf(share, nth))
  return (
    <div class="picture carried">
      <svg class="defs" aria-hidden="true">
        <defs>
          <Patterns of={of} bands={bands} />
        </defs>
      </svg>
      <ul aria-label="Carried then">
        {parts.map((part, i) => {
          const { word, share } = part
          return isShown(part, formats) ? (
            <li key={keyOf(part)} class={keyOf(part) === named ? 'named' : undefined}>
              <Swatch of={of} band={bands[i]!} />
              <bdi>{word}</bdi>
              <b>{share === 'wanted' ? `+${formats.kg(part.kg)}` : formats.kg(part.kg)}</b>
              <span>{share === 'wanted' ? '' : roomText(part, formats)}</span>
            </li>
          ) : null
        })}
        <li class="together">
          <span />
          <span>Together{atLeast(missing)}</span>
          <b>
            <Why
              about={{ kind: 'moment-load', moment }}
              figure={formats.kg(kg.total)}
              title="What is carried then"
            />
          </b>
          <span>
            <Why
              about={{ kind: 'moment-litres', moment, pack }}
              figure={formats.litres(bodyLitres)}
              title="What is inside then"
            />
          </span>
        </li>
      </ul>
    </div>
  )
}

/** What is still missing can only raise a sum; said once, since the figures have no room for it. */
function atLeast({ mass, litres }: Missing): string {
  if (mass.length + litres.length === 0) return ''
  return `,${litres.length === 0 ? ' mass' : mass.length === 0 ? ' litres' : ''} at least`
}

/** What rounds to nothing is left out. */
const isShown = ({ kg, litres }: CarriedPart, formats: Formats) =>
  formats.kg(kg) !== formats.kg(0) || formats.litres(litres) !== formats.litres(0)

const roomText = ({ litres, elsewhere }: CarriedPart, formats: Formats) =>
  litres > 0 ? formats.litres(litres) : <small>{elsewhere}</small>
