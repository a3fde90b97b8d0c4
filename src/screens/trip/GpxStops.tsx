// The stops proposed along a track: keep or drop each, name it, and say what is there.

import { useId, useState } from 'preact/hooks'
import { QuantityInput, readQuantity, useFormats, useSystem } from '../../components/fields'
import { usePortions } from '../../components/long-list'
import { WhenOpen } from '../../components/pieces'
import { Why } from '../../components/why'
import { type ChosenStop, hoursOf, type KeptStop } from '../../files/gpx'
import { CAPS, LIMITS } from '../../plan'
import type { Formats } from '../../report'

type Pace = Parameters<typeof hoursOf>[1]

interface Props {
  kept: readonly KeptStop[]
  chosen: readonly ChosenStop[]
  pace: Pace
  /** Of the proposal, for what an even day of it comes to. */
  days: number
  onChange: (chosen: ChosenStop[]) => void
}

export function GpxStops({ kept, chosen, pace, days, onChange }: Props) {
  const formats = useFormats()
  const legs = new Map(kept.map(stop => [stop.key, stop.leg]))
  const change = (key: string, part: Partial<ChosenStop>) =>
    onChange(chosen.map(stop => (stop.key === key ? { ...stop, ...part } : stop)))
  const { drawn, more } = usePortions(chosen.length, 'stops')
  const extra = chosen.filter(stop => stop.kind === 'waypoint')
  const keepExtra = (on: boolean) =>
    onChange(chosen.map(stop => (stop.kind === 'waypoint' ? { ...stop, kept: on } : stop)))
  return (
    <section data-figures="why">
      <h3>Proposed stops</h3>
      {extra.length > 1 ? (
        <label class="toggle">
          <input
            type="checkbox"
            checked={extra.some(stop => stop.kept)}
            onChange={event => keepExtra(event.currentTarget.checked)}
          />
          <span>Keep the {extra.length} waypoints without a night</span>
        </label>
      ) : null}
      <ol class="rows">
        {chosen.slice(0, drawn).map(stop => (
          <li key={stop.key} class="row gpx-stop">
            <p>
              <bdi class="name">{stop.name}</bdi>
              <span class="facts-line">{stop.kind === 'start' ? '' : ` at ${formats.km(stop.km)}`}</span>
            </p>
            <p class="facts-line">{legText(legs.get(stop.key), { stop, formats, pace })}</p>
            {stop.kind === 'waypoint' || stop.kind === 'night' ? (
              <label class="toggle">
                <input
                  type="checkbox"
                  checked={stop.kept}
                  onChange={event => change(stop.key, { kept: event.currentTarget.checked })}
                />
                <span>
                  Keep <span class="unseen">{stop.name}</span>
                </span>
              </label>
            ) : null}
            {stop.kept ? <Details stop={stop} onChange={part => change(stop.key, part)} /> : null}
          </li>
        ))}
      </ol>
      {more}
      <Why about={{ kind: 'track', legs: legsOf(kept, pace), pace, days }} figure="What makes these legs" />
    </section>
  )
}

/** The kept legs as the reasons ask for them. */
const legsOf = (kept: readonly KeptStop[], pace: Pace) =>
  kept.flatMap(({ name, km: atKm, leg }) => (leg ? [{ ...leg, name, atKm, hours: hoursOf(leg, pace) }] : []))

function legText(
  leg: KeptStop['leg'] | undefined,
  { stop, formats, pace }: { stop: ChosenStop; formats: Formats; pace: Pace },
): string {
  if (!stop.kept) return 'Dropped: its way goes into the next leg.'
  if (!leg) return 'Start'
  const parts = [`Leg ${formats.km(leg.km)}`]
  if (leg.ascentM !== null && leg.descentM !== null)
    parts.push(`up ${formats.metres(leg.ascentM)}`, `down ${formats.metres(leg.descentM)}`)
  parts.push(formats.hours(hoursOf(leg, pace)))
  if (leg.unknownKm > 0 && leg.ascentM !== null)
    parts.push(`elevation missing on ${formats.km(leg.unknownKm)}: more climb than this`)
  return parts.join(', ')
}

const WATERS = [
  { value: 'sure', label: 'Sure' },
  { value: 'doubtful', label: 'Doubtful' },
  { value: 'none', label: 'None' },
] as const

const NIGHTS = { kind: 'count', label: 'Nights', limit: LIMITS.stop.nights } as const

function Nights({ nights, onNights }: { nights: number; onNights: (nights: number) => void }) {
  const system = useSystem()
  const [typed, setTyped] = useState('')
  const read = (text: string) => readQuantity(text, { ...NIGHTS, system })
  const meant = read(typed)
  // Another proposal may have given the stop other nights than were typed.
  const text = 'message' in meant || meant.value === nights ? typed : String(nights)
  const onText = (text: string) => {
    setTyped(text)
    const reading = read(text)
    if (!('message' in reading)) onNights(reading.value ?? 0)
  }
  const reading = read(text)
  const value = 'message' in reading ? undefined : reading.value
  const steps = { ...NIGHTS, value, onValue: (next: number) => onText(String(next)) }
  return <QuantityInput label="Nights" {...{ text, reading, onText, steps }} inputMode="numeric" />
}

interface DetailsProps {
  stop: ChosenStop
  onChange: (part: Partial<ChosenStop>) => void
}

/** The start fills its bottles and the end needs nothing: only what lies between has a stay. */
function Details({ stop, onChange }: DetailsProps) {
  const isBetween = stop.kind !== 'start' && stop.kind !== 'end'
  return (
    <WhenOpen
      class="more"
      summary={
        <>
          Name{isBetween ? ', water, nights' : ''}
          <span class="unseen"> of {stop.name}</span>
        </>
      }
    >
      {() => (
        <>
          <label class="field">
            Name
            <input
              type="text"
              autocomplete="off"
              maxLength={CAPS.nameLength}
              value={stop.name}
              onInput={event => onChange({ name: event.currentTarget.value })}
            />
          </label>
          {isBetween ? <Stay stop={stop} onChange={onChange} /> : null}
        </>
      )}
    </WhenOpen>
  )
}

function Stay({ stop, onChange }: DetailsProps) {
  const id = useId()
  return (
    <>
      <fieldset class="choice">
        <legend>Water here</legend>
        <div class="options">
          {WATERS.map(({ value, label }) => (
            <label key={value} class="option">
              <input
                type="radio"
                name={`${id}-water`}
                checked={stop.water === value}
                onChange={() => onChange({ water: value })}
              />
              <span>{label}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <Nights nights={stop.nights} onNights={nights => onChange({ nights })} />
      <label class="toggle">
        <input
          type="checkbox"
          checked={stop.resupply}
          onChange={event => onChange({ resupply: event.currentTarget.checked })}
        />
        <span>Resupply here: food is bought again</span>
      </label>
    </>
  )
}
