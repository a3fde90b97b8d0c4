// "What would make it do?" under a set-up that fails or may not fit: the changes in words, each one tap away and one step to undo.

import { useEffect, useState } from 'preact/hooks'
import { Cautions, WhenOpen } from '../../components/pieces'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning, Remedy } from '../../reckon'
import type { Formats } from '../../report'
import { type Help as Found, helpFor, remedyLabel } from '../../report/compare-packs'
import { actions } from '../../store'
import { replacements } from '../../store/swaps'
import { takeThings } from '../gear/swaps'
import { applyRemedyToDraft } from './apply-remedy'
import { setupDomId } from './setup-id'

interface HelpProps {
  question: string
  setupIndex: number
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** Told what was done, in the words that undo names it by. */
  onDone: (label: string) => void
}

export function Help({ question, ...props }: HelpProps) {
  return (
    <WhenOpen class="why" summary={question}>
      {() => <Remedies {...props} />}
    </WhenOpen>
  )
}

/** Typing elsewhere while this is open: worked out anew only once it has paused. */
const PAUSE_MS = 500

function Remedies({ setupIndex, plan, reckoning, formats, onDone }: Omit<HelpProps, 'question'>) {
  const [found, setFound] = useState<{ help: Found; plan: Plan; formats: Formats } | null>(null)
  const current = found?.plan === plan && found.formats === formats ? found.help : null
  useEffect(() => {
    if (current) return
    const work = () => {
      const help = helpFor(plan, reckoning, { setupIndex, formats, swaps: replacements() })
      setFound({ help, plan, formats })
    }
    const timer = setTimeout(work, found ? PAUSE_MS : 0)
    return () => clearTimeout(timer)
  }, [plan, formats])
  if (!current)
    return (
      <p class="hint" role="status">
        Working it out…
      </p>
    )
  const gains = {
    kind: 'remedies',
    setup: setupIndex,
    remedies: current.remedies.map(it => it.remedy),
  } as const
  if (current.remedies.length === 0)
    return (
      <div class="figures" data-figures="why">
        <p>{current.shortfall}</p>
        <Why about={gains} figure="What this trip asks of a pack" />
      </div>
    )

  const apply = (remedy: Remedy) => {
    const label = remedyLabel(remedy, plan)
    if (remedy.kind === 'swap') takeThings(label, remedy.swaps)
    else actions.edit(label, draft => applyRemedyToDraft(draft, remedy))
    onDone(label)
  }
  return (
    <div class="figures" data-figures="why">
      <ol class="remedies">
        {current.remedies.map(({ text, remedy, caution }) => (
          <li key={text}>
            <p>{text}</p>
            {caution ? <Cautions cautions={[caution]} /> : null}
            {remedy.kind === 'other-setup' ? (
              <button type="button" aria-label="Show the other set-up" onClick={() => show(remedy.setup)}>
                Show it
              </button>
            ) : (
              <button
                type="button"
                aria-label={`Do it: ${remedyLabel(remedy, plan)}`}
                onClick={() => apply(remedy)}
              >
                Do it
              </button>
            )}
          </li>
        ))}
      </ol>
      <Why about={gains} figure="What each of these gains" />
    </div>
  )
}

function show(setupIndex: number) {
  const element = document.getElementById(setupDomId(setupIndex))
  element?.focus()
  element?.scrollIntoView({ block: 'center' })
}
