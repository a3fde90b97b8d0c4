// The packings there are, the latest first, each with what it said and the way to withdraw it.

import { useRef } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { dateText } from '../../components/pieces'
import type { Packing } from '../../plan/shelf'
import type { Formats } from '../../report'
import { effectText, isCounted, oddText } from '../../report/confidence'
import { withdraw } from './edit-packings'

interface PackingsProps {
  packings: Packing[]
  onNoneLeft: () => void
}

export function Packings({ packings, onNoneLeft }: PackingsProps) {
  const heading = useRef<HTMLHeadingElement>(null)
  const formats = useFormats()
  if (packings.length === 0) return null
  return (
    <section aria-labelledby="packings">
      <h3 id="packings" ref={heading} tabIndex={-1}>
        Your packings
      </h3>
      <ul class="rows">
        {packings.toReversed().map(packing => (
          <li key={packing.id} class="row packing">
            <bdi class="name">{packing.gear}</bdi>
            <span class="facts-line">
              {dateText(packing.at)}, <bdi>{packing.pack}</bdi> of {formats.litres(packing.bodyLitres)},{' '}
              {saidText(packing, formats)}
            </span>
            <span>
              Takes {effectText(packing.factor)}: factor {packing.factor.toFixed(2)}
              {isCounted(packing) ? '' : '; not counted, as it does not say what was along'}
            </span>
            <Odd packing={packing} packings={packings} />
            <button
              type="button"
              class="quiet"
              aria-label={`Remove the packing of ${packing.gear}, ${dateText(packing.at)}`}
              onClick={() => {
                withdraw(packing)
                // The button that was tapped is gone, and with the last one the list.
                if (packings.length > 1) heading.current?.focus()
                else onNoneLeft()
              }}
            >
              Remove
            </button>
          </li>
        ))}
      </ul>
      <SamePack packings={packings} />
    </section>
  )
}

/** With one packing only there is nothing to hold it against but the general model, which was said as it was added. */
function Odd({ packing, packings }: { packing: Packing; packings: Packing[] }) {
  const others = packings.filter(other => other !== packing).map(({ factor }) => factor)
  const odd = others.length > 0 ? oddText(packing.factor, others) : null
  return odd ? <span class="odd">{odd}</span> : null
}

/** What agrees only because it shares an error is not surer for being many. */
function SamePack({ packings }: { packings: Packing[] }) {
  const [first, ...others] = packings
  const isSame = ({ said, pack, bodyLitres }: Packing) =>
    said.how !== 'box' && pack === first?.pack && bodyLitres === first.bodyLitres
  if (!first || others.length === 0 || !packings.every(isSame)) return null
  return (
    <p class="hint">
      All of them in one pack: if its litres are stated wrongly, the factor is off with them. The range allows
      for that; a carton, or another pack, would narrow it.
    </p>
  )
}

function saidText({ said }: Packing, formats: Formats): string {
  if (said.how === 'over') return `would not close by ${formats.litres(said.overLitres)}`
  if (said.how === 'box') return 'pressed and measured'
  return said.fullness === 1 ? 'full to the brim' : `${formats.percent(said.fullness)} full`
}
