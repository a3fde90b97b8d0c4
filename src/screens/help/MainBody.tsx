// What main-body litres are, and why not the total of the label.

import { useId } from 'preact/hooks'
import { fillOf, Patterns, Swatch } from '../../components/graphics'
import type { Pack } from '../../plan'
import type { Formats } from '../../report'
import type { ContentsProps } from './contents-props'

export function MainBody({ example, formats }: ContentsProps) {
  return (
    <>
      <LitresBar pack={example.plan.packs[0]!} formats={formats} />
      <p>
        A label often tells one total. Yet most gear goes into the main body, and pockets take only what you
        put there. So the app asks for main-body litres.
      </p>
    </>
  )
}

const HEIGHT_PX = 44

/** The litres of a label in a bar, by where they are. */
function LitresBar({ pack, formats }: { pack: Pack; formats: Formats }) {
  const of = useId()
  const parts = [
    { word: 'main body', litres: pack.bodyLitres, band: 'kept1' },
    { word: 'pockets', litres: pack.outsideLitres ?? 0, band: 'kept2' },
    { word: 'collar', litres: pack.collarLitres, band: 'kept3' },
  ] as const
  const total = parts.reduce((sum, { litres }) => sum + litres, 0)
  const share = (litres: number) => `${(100 * litres) / total}%`
  const startOf = (index: number) => parts.slice(0, index).reduce((sum, { litres }) => sum + litres, 0)
  return (
    <figure class="picture">
      <svg width="100%" height={HEIGHT_PX} aria-hidden="true">
        <defs>
          <Patterns of={of} bands={parts.map(({ band }) => band)} />
        </defs>
        {parts.map(({ litres, band }, i) => (
          <rect
            key={band}
            class="box"
            x={share(startOf(i))}
            y="1"
            width={share(litres)}
            height={HEIGHT_PX - 2}
            fill={fillOf(of, band)}
          />
        ))}
      </svg>
      <ul class="key">
        {parts.map(({ word, litres, band }) => (
          <li key={band}>
            <Swatch of={of} band={band} />
            <span>
              {word} <b>{formats.litresWhole(litres)}</b>
            </span>
          </li>
        ))}
      </ul>
      <figcaption>{formats.litresWhole(total)} on its label (invented)</figcaption>
    </figure>
  )
}
