// The packing model: rigid things, soft things, and the gaps between them.

import { useId } from 'preact/hooks'
import { fillOf, Patterns } from '../../components/graphics'
import { Why } from '../../components/why'
import { momentAt } from '../../report'
import type { ContentsProps } from './contents-props'

export function Filling({ example: { reckoning }, formats }: ContentsProps) {
  const { rigidLitres, softLitres, bodyLitres } = momentAt(reckoning, reckoning.need.bodyAt)
  return (
    <>
      <div class="help-boxes">
        <Box rigid caption="Rigid items leave gaps" />
        <Box soft caption="Soft items fill almost all" />
        <Box rigid soft caption="Together they share gaps" />
      </div>
      <p>
        Here {formats.litres(rigidLitres)} of rigid and {formats.litres(softLitres)} of soft items ask for{' '}
        <Why about={{ kind: 'body-litres' }} figure={formats.litres(bodyLitres)} title="Main body" /> of room.
        Hands differ: once you say how full your own pack was, that counts.
      </p>
    </>
  )
}

/** Where rigid things stand in the box, in its hundredths. */
const STONES = [
  [24, 76, 20],
  [70, 72, 24],
  [32, 34, 22],
  [78, 26, 18],
] as const

/** A box of things, drawn and not reckoned. */
function Box({ rigid, soft, caption }: { rigid?: true; soft?: true; caption: string }) {
  const of = useId()
  return (
    <figure class="picture">
      <svg viewBox="0 0 100 100" aria-hidden="true">
        <defs>
          <Patterns of={of} bands={['kept1', 'water']} />
        </defs>
        <rect class="box" x="2" y="2" width="96" height="96" fill={soft ? fillOf(of, 'water') : 'none'} />
        {rigid
          ? STONES.map(([cx, cy, r]) => (
              <circle key={cx} class="box" cx={cx} cy={cy} r={r} fill={fillOf(of, 'kept1')} />
            ))
          : null}
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  )
}
