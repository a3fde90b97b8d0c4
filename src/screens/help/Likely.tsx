// What "likely" and "9 of 10" mean, in ten packs alike.

import { useId } from 'preact/hooks'
import { fillOf, Patterns } from '../../components/graphics'
import { Why } from '../../components/why'
import { enoughText, likelyText } from '../../report/confidence'
import { tenCases } from '../../report/help'
import type { ContentsProps } from './contents-props'

export function Likely({ example: { reckoning }, formats }: ContentsProps) {
  const { need } = reckoning
  const cases = tenCases(need)
  const held = cases.filter(litres => litres <= need.bodyLitresSafe).length
  return (
    <>
      <figure class="picture">
        <TenPacks cases={cases} packLitres={need.bodyLitresSafe} />
        <figcaption>
          A pack of {formats.litresUp(need.bodyLitresSafe)} in ten cases: {held} fit.
        </figcaption>
      </figure>
      <p>
        A guess may be far off, what you measured is close. So the need is a range, likely{' '}
        <Why about={{ kind: 'body-litres' }} figure={likelyText(need, formats)} title="Main body" />: one case
        in ten needs less, one more. {enoughText(need, formats)}.
      </p>
    </>
  )
}

const WIDTH = 32
const HEIGHT = 60
const BRIM = 14

/** Each filled as high as its case needs, the brim at one height. */
function TenPacks({ cases, packLitres }: { cases: readonly number[]; packLitres: number }) {
  const of = useId()
  return (
    <svg viewBox={`0 0 ${WIDTH * cases.length} ${BRIM + HEIGHT + 2}`} class="ten-packs" aria-hidden="true">
      <defs>
        <Patterns of={of} bands={['kept1', 'wanted']} />
      </defs>
      {cases.map((litres, i) => {
        const high = (HEIGHT * litres) / packLitres
        const inside = Math.min(high, HEIGHT)
        const bottom = BRIM + HEIGHT
        const x = i * WIDTH + 4
        return (
          <g key={litres}>
            <rect
              class="band"
              {...{ x }}
              y={bottom - inside}
              width={WIDTH - 8}
              height={inside}
              fill={fillOf(of, 'kept1')}
            />
            {high > HEIGHT ? (
              <rect
                class="band"
                {...{ x }}
                y={bottom - high}
                width={WIDTH - 8}
                height={high - HEIGHT}
                fill={fillOf(of, 'wanted')}
              />
            ) : null}
            <path class="crest" d={`M${x} ${BRIM - 1}V${bottom}H${x + WIDTH - 8}V${BRIM - 1}`} />
            <path class="crest" d={`M${x - 3} ${BRIM}H${x + WIDTH - 5}`} />
          </g>
        )
      })}
    </svg>
  )
}
