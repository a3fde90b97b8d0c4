// All safety notes together: those of every trip in full, and those that a trip may bring about, a line each.

import { useMemo } from 'preact/hooks'
import { Cautions } from '../../components/pieces'
import { FIT_LINE, GENERAL_CAUTIONS, GENERAL_LINE } from '../../report'
import { cautionExamples, SIGNALS } from '../../report/help'
import type { ContentsProps } from './contents-props'

export function SafetyNotes({ formats }: ContentsProps) {
  const examples = useMemo(() => cautionExamples(formats), [formats])
  return (
    <>
      <p>{GENERAL_LINE}</p>
      <p>{FIT_LINE}</p>
      <Cautions cautions={GENERAL_CAUTIONS} />
      <h3>Told when a trip calls for it</h3>
      <p>With figures of invented trips.</p>
      <ul class="cautions">
        {SIGNALS.map(signal => (
          <li key={signal} class={`caution ${signal.toLowerCase()}`}>
            <strong>{signal}</strong>
            <ul>
              {examples
                .filter(each => each.signal === signal)
                .map(({ text }) => (
                  <li key={text}>{text}</li>
                ))}
            </ul>
          </li>
        ))}
      </ul>
    </>
  )
}
