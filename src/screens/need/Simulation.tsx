// The formula checked by trial: the plan packed at chance twenty thousand times, beside what the formula says.
// Nothing waits for it; it runs apart and can be cancelled.

import { useEffect, useRef, useState } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning, Simulation } from '../../reckon'
import type { Formats } from '../../report'
import { simulationInWords } from '../../report/confidence'
import { runSimulation } from '../../store/simulation'
import { formatQuantity } from '../../units'

const RUNS = 20_000

interface SimulationProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

type State =
  | { at: 'idle'; said?: string }
  | { at: 'trying'; share: number }
  | { at: 'tried'; simulation: Simulation; seed: number; plan: Plan }

export function SimulationCheck({ plan, reckoning, formats }: SimulationProps) {
  const [state, setState] = useState<State>({ at: 'idle' })
  const running = useRef<AbortController | null>(null)
  // Leaving the screen, or changing the trip, ends a trial that still goes on.
  useEffect(() => () => running.current?.abort(), [plan])
  const box = useRef<HTMLDivElement>(null)
  // The button that was pressed is gone then: the focus goes to the one in its place.
  useEffect(() => {
    if (running.current && document.activeElement === document.body)
      box.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [state.at])

  async function start(seed: number) {
    running.current?.abort()
    const own = new AbortController()
    running.current = own
    setState({ at: 'trying', share: 0 })
    const end = await runSimulation({
      plan,
      reckoning,
      runs: RUNS,
      seed,
      signal: own.signal,
      onProgress: share => setState({ at: 'trying', share }),
    })
    if (running.current !== own) return
    if (end.ok) setState({ at: 'tried', simulation: end.simulation, seed, plan })
    else setState({ at: 'idle', said: end.message })
  }

  const isStale = state.at === 'tried' && state.plan !== plan
  return (
    <div class="trial" ref={box}>
      {state.at === 'trying' ? (
        <div class="trial-running">
          <progress aria-label="Simulation" max={1} value={state.share} />
          <button type="button" onClick={() => running.current?.abort()}>
            Cancel
          </button>
        </div>
      ) : (
        <button
          type="button"
          class="quiet"
          onClick={() => start(state.at === 'tried' && !isStale ? state.seed + 1 : 1)}
        >
          {state.at === 'tried' && !isStale ? 'Run again' : 'Check by simulation'}
        </button>
      )}
      {state.at === 'idle' ? (
        <p class="hint">
          Simulates {formatQuantity('number', RUNS, { system: formats.system })} packings to check the
          formula.
        </p>
      ) : null}
      <div role="status" data-figures="cited">
        {state.at === 'idle' && state.said ? <p>{state.said}</p> : null}
        {isStale ? <p class="hint">The trip has changed since the last run.</p> : null}
        {state.at === 'tried' && !isStale ? <Tried {...state} formats={formats} /> : null}
      </div>
    </div>
  )
}

function Tried({
  simulation,
  seed,
  plan,
  formats,
}: {
  simulation: Simulation
  seed: number
  plan: Plan
  formats: Formats
}) {
  const words = simulationInWords(simulation, plan, formats)
  return (
    <>
      <p class={words.agrees ? undefined : 'trial-differs'}>{words.verdict}</p>
      <div class="scroll">
        <table>
          <caption>Main body, by formula and by simulation</caption>
          <thead>
            <tr>
              <th scope="col">Litres</th>
              <th scope="col">Formula</th>
              <th scope="col">Simulation</th>
            </tr>
          </thead>
          {words.rows.map(row => (
            <tbody key={row.name}>
              <tr>
                <th scope="row">{row.name}</th>
                <td>{row.formula}</td>
                <td>{row.trial}</td>
              </tr>
              {row.said ? (
                <tr>
                  <td colSpan={3}>{row.said}</td>
                </tr>
              ) : null}
            </tbody>
          ))}
        </table>
      </div>
      {words.reasons.map(reason => (
        <p key={reason}>{reason}</p>
      ))}
      <p class="hint">{words.shapes}</p>
      <p class="hint">Run {seed}. The same run gives the same figures.</p>
    </>
  )
}
