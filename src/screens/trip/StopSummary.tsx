// What is at a stop and on the leg that leads there, in one glance: the way, then water, nights and food.

import type { ComponentProps } from 'preact'
import { StopMark } from '../../components/graphics'
import type { DraftStop } from '../../plan'
import type { Formats } from '../../report'
import { counted } from '../../units'

interface Props {
  stop: DraftStop
  name: string
  end: 'first' | 'last' | null
  formats: Formats
}

type Kind = ComponentProps<typeof StopMark>['kind']

/** A fact in its column. */
interface Fact {
  at: 'km' | 'up' | 'down' | 'water' | 'nights' | 'food' | 'air'
  text: string
  mark?: Kind
}

const WATERS = { sure: 'water', doubtful: 'doubtful water', none: 'no water' } as const

export function StopSummary(props: Props) {
  return (
    <>
      <bdi class="name">{props.name}</bdi>
      <span class="stop-facts" data-figures="typed">
        {factsOf(props).map(({ at, text, mark }, i) => (
          <span key={at} class={`fact fact-${at}`}>
            {mark ? (
              <svg class="fact-mark" viewBox="-7 -7 14 14" aria-hidden="true">
                <StopMark kind={mark} x={0} y={0} size={12} />
              </svg>
            ) : null}
            {i > 0 ? <span class="unseen">, </span> : null}
            {text}
          </span>
        ))}
      </span>
    </>
  )
}

function factsOf({ stop, end, formats }: Props): Fact[] {
  if (end === 'first') return [{ at: 'km', text: 'start' }]
  const { leg = {}, water = 'none', nights = 0 } = stop
  const food = [
    stop.resupply ? 'resupply' : stop.shop ? 'shop' : '',
    stop.meals === 'provided' ? 'meals provided' : '',
  ]
  const facts: (Fact | false)[] = [
    { at: 'km', text: leg.km === undefined ? 'no distance' : formats.km(leg.km) },
    !!leg.ascentM && { at: 'up', text: `up ${formats.metres(leg.ascentM)}` },
    !!leg.descentM && { at: 'down', text: `down ${formats.metres(leg.descentM)}` },
    end === null && { at: 'water', text: WATERS[water], ...(water !== 'none' && { mark: water }) },
    nights > 0 && { at: 'nights', text: counted(nights, 'night'), mark: 'night' },
    food.some(Boolean) && {
      at: 'food',
      text: food.filter(Boolean).join(', '),
      ...(stop.resupply && { mark: 'resupply' }),
    },
    leg.airC !== undefined && { at: 'air', text: formats.degrees(leg.airC) },
  ]
  return facts.filter(fact => fact !== false)
}
